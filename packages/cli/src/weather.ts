import { resolve } from "node:path";
import {
  type DailyWeather,
  formatDailyWeather,
  formatStationTable,
  joinDailyWeather,
  type Understood,
  understandStationFile,
} from "rootledger/weather";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { questionText } from "./print/station-question.js";
import { joinedText, stationText } from "./print/station-report.js";
import { weatherSchema } from "./print/weather-table.js";
import { progress } from "./progress.js";
import type { InputFault } from "./read-input.js";
import { faulty, Refused, sound } from "./refused.js";
import type { Asked } from "./run.js";
import { unreadableReason } from "./unreadable-reason.js";
import { words } from "./words.js";

type Read = Extract<Understood, { ok: true }>;

/** `rootledger weather FILE [FILE ...]`: what was understood; with --csv the days, or the records of a file without weather. */
export async function weatherCommand(asked: Asked, io: Io): Promise<number> {
  const { file, moreFiles, output } = asked;
  const { answers } = sound(answersOf(asked.answers));
  const tell = progress(io);
  const reads: { readonly file: string; readonly read: Read }[] = [];
  for (const name of [file, ...moreFiles]) {
    const bytes = await readBytes(name, io);
    if (!bytes.ok) throw faulty([{ path: name, received: bytes.reason, rule: words.notReadable }]);
    const read = understandStationFile(bytes.bytes, answers, (stage, share) =>
      tell(`${name}: ${stage}, ${Math.round(100 * share)} %`),
    );
    if (!read.ok && read.question !== undefined) throw new Refused(questionText(name, read.question));
    if (!read.ok) throw faulty(read.faults.map((one) => ({ ...one, path: placeIn(name, one.path) })));
    reads.push({ file: name, read });
  }
  const [only] = reads;
  if (reads.length === 1 && only !== undefined) {
    io.stdout(printed(only.file, only.read, output));
    return exit.done;
  }
  return joined(reads, output, io);
}

const placeIn = (file: string, path: string): string => (path === "" ? file : `${file}, ${path}`);

function printed(file: string, { table, daily, report }: Read, output: Asked["output"]): string {
  if (output === "json") return jsonText({ file, report, daily, table });
  if (output !== "table") {
    const text = daily === undefined ? formatStationTable(table) : formatDailyWeather(daily.weather);
    return output === "csv" ? text : weatherSchema(text, daily === undefined ? "records" : "days");
  }
  return stationText(file, report, daily);
}

/** Files of one place, such as one variable each, joined by their dates. */
function joined(
  reads: readonly { readonly file: string; readonly read: Read }[],
  output: Asked["output"],
  io: Io,
): number {
  const days: DailyWeather[] = [];
  for (const { file, read } of reads) {
    if (read.daily === undefined) throw faulty([{ path: file, received: "no days", rule: words.noDaysToJoin }]);
    days.push(read.daily.weather);
  }
  const together = joinDailyWeather(days);
  if (!together.ok) {
    const path = reads.map(({ file }) => file).join(" + ");
    throw faulty(together.conflicts.map((received) => ({ path, received, rule: words.conflict })));
  }
  const { weather, notes } = together;
  const reports = reads.map(({ file, read }) => ({ file, report: read.report, notes: read.daily?.notes ?? [] }));
  if (output === "json") io.stdout(jsonText({ files: reports, weather, notes }));
  else if (output === "csv") io.stdout(formatDailyWeather(weather));
  else if (output === "schema") io.stdout(weatherSchema(formatDailyWeather(weather), "days"));
  else
    io.stdout(
      reads.map(({ file, read }) => `${stationText(file, read.report, read.daily)}\n`).join("") +
        joinedText(weather, notes),
    );
  return exit.done;
}

type Bytes = { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly reason: string };

async function readBytes(file: string, io: Io): Promise<Bytes> {
  try {
    return { ok: true, bytes: await io.readBytes(resolve(file)) };
  } catch (error) {
    return { ok: false, reason: unreadableReason(error) };
  }
}

type Answers =
  | { readonly ok: true; readonly answers: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

function answersOf(given: readonly string[]): Answers {
  const answers: Record<string, string> = {};
  for (const text of given) {
    const at = text.indexOf("=");
    if (at < 1) return { ok: false, faults: [{ path: "--answer", received: text, rule: words.notAnAnswer }] };
    answers[text.slice(0, at)] = text.slice(at + 1);
  }
  return { ok: true, answers };
}
