import { formatDailyWeather, parseDailyWeather, understandStationFile } from "rootledger/weather";
import type { Io } from "./io.js";
import { questionText } from "./print/station-question.js";
import { type InputFault, readText } from "./read-input.js";
import { unreadableReason } from "./unreadable-reason.js";
import { words } from "./words.js";

type StationText =
  | { readonly ok: true; readonly text: string; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly InputFault[] }
  | { readonly ok: false; readonly question: string };

/** The days of a weather file as text: as they stand where the file has our columns, else as a station file is understood. */
export async function stationText(path: string, io: Io): Promise<StationText> {
  const own = await readText(path, io);
  if (own.ok && isOwn(own.text)) return { ok: true, text: own.text, notes: [] };
  const refused = (received: string, rule: string) => ({ ok: false, faults: [{ path, received, rule }] }) as const;
  let bytes: Uint8Array;
  try {
    bytes = await io.readBytes(path);
  } catch (error) {
    return refused(unreadableReason(error), words.notReadable);
  }
  const read = understandStationFile(bytes, {}, () => {});
  if (!read.ok && read.question !== undefined) return { ok: false, question: questionText(path, read.question) };
  if (!read.ok) {
    return { ok: false, faults: read.faults.map((one) => ({ ...one, path: `${path} ${one.path}`.trim() })) };
  }
  if (read.daily === undefined) return refused("no days", words.noDaysToJoin);
  const notes = read.daily.notes.map((note) => `${path}: ${note}`);
  return { ok: true, text: formatDailyWeather(read.daily.weather), notes };
}

/** Our own columns, gaps or not: a file in which nothing but missing values is at fault. */
function isOwn(text: string): boolean {
  const parsed = parseDailyWeather(text, { temperature: { kind: "interpolate", longestDays: 1e9 }, rain: "dry" });
  return parsed.ok || parsed.faults.every(({ code }) => code === "missing-value");
}
