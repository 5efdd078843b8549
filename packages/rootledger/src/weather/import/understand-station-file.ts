import type { WeatherFault } from "../weather-fault.js";
import { checkAnswers, type StationAnswers } from "./answers.js";
import { tableColumns } from "./build-table.js";
import { columnReport } from "./column-report.js";
import { type DailyOfTable, dailyWeatherOf } from "./daily-weather-of.js";
import { decodeBytes } from "./decode-bytes.js";
import { type EncodingName, encodingOf } from "./encoding.js";
import { foreignFile } from "./foreign-file.js";
import { isQuantity } from "./header-role.js";
import { irrigationDepth } from "./irrigation-depth.js";
import { type Grid, readGrid } from "./read-grid.js";
import { type SettledFile, settleAll } from "./settle-all.js";
import { siteColumns } from "./site-columns.js";
import { openStationFile, type StationFile } from "./station-file.js";
import type { StationQuestion } from "./station-question.js";
import type { StationReport } from "./station-report.js";
import { stationReport } from "./station-summary.js";
import type { StationTable } from "./station-table.js";
import { fault, isStop, type Stop } from "./stop.js";
import { type TimeAxis, timeAxis } from "./time-axis.js";

/** A table, a question, or faults. */
export type Understood =
  | {
      readonly ok: true;
      readonly table: StationTable;
      /** The days of the record; undefined where it holds no weather. */
      readonly daily: DailyOfTable | undefined;
      readonly report: StationReport;
    }
  | { readonly ok: false; readonly question: StationQuestion; readonly faults: readonly [] }
  | { readonly ok: false; readonly question: undefined; readonly faults: readonly WeatherFault[] };

/** Called with the stage that begins and the share of the work done, 0 to 1. */
export type StationProgress = (stage: string, share: number) => void;

/**
 * Reads a station or sensor file as people have it: bytes in any of the usual encodings, cells parted by commas, semicolons, tabs or blanks, at fixed places or in JSON, with titles, unit rows,
 * decimal commas, dates in any order, missing codes, clock changes, counting gauges and so on. What the file does not say is never guessed silently: it is either taken for something
 * with the reason in the report, or asked about; the answer is given under the question's key. Never throws on any bytes.
 *
 * @example understandStationFile(new Uint8Array([100, 97, 121]))
 */
export function understandStationFile(
  bytes: Uint8Array,
  answers: StationAnswers = {},
  onProgress: StationProgress = () => {},
): Understood {
  const understood = understand(bytes, answers, onProgress);
  if (!isStop(understood)) return understood;
  if (understood.stop === "question") return { ok: false, question: understood.question, faults: [] };
  return { ok: false, question: undefined, faults: understood.faults };
}

function understand(
  bytes: Uint8Array,
  answers: StationAnswers,
  onProgress: StationProgress,
): Stop | Extract<Understood, { ok: true }> {
  const wrong = checkAnswers(answers);
  if (wrong !== undefined) return wrong;
  onProgress("reading the text", 0);
  const foreign = foreignFile(bytes);
  if (foreign !== undefined) return fault("not-text", "", foreign, "must be text; save a spreadsheet as CSV first");
  const found = encodingOf(bytes);
  const encoding = answers.encoding === undefined ? found : { ...found, name: answers.encoding as EncodingName };
  const text = decodeBytes(bytes, encoding)
    .replace(/^\uFEFF/, "")
    .replaceAll("\u0000", " ");
  onProgress("finding rows and columns", 0.1);
  const grid = readGrid(text, answers);
  if (isStop(grid)) return grid;
  onProgress("reading dates", 0.4);
  const file = openStationFile(grid, answers);
  if (isStop(file)) return file;
  const site = siteColumns(file);
  const axis = timeAxis(file, site, eventTest(file), answers);
  if (isStop(axis)) return axis;
  onProgress("reading values", 0.6);
  const settled = settleAll(file, axis, answers);
  if (isStop(settled)) return settled;
  onProgress("making days", 0.9);
  const encodingText = encoding.name + (encoding.markBytes > 0 ? " with byte order mark" : "");
  return finished({ grid, file, axis, settled, site, encodingText }, answers);
}

/** A row without any value, but with a word in a column that is not kept, is an event of the logger. */
function eventTest({ plans, body }: StationFile): (row: number) => boolean {
  const quantities = plans.filter(({ role }) => isQuantity(role));
  const others = plans.filter(({ role }) => role.kind === "other");
  return (row) => {
    body.rows.open(body.places[row]);
    if (quantities.some(({ index }) => !body.rows.isEmpty(index))) return false;
    return others.some(({ index }) => /^[a-z]{3,}/i.test(body.rows.cell(index)));
  };
}

interface Parts {
  readonly grid: Grid;
  readonly file: StationFile;
  readonly axis: TimeAxis;
  readonly settled: SettledFile;
  readonly site: StationReport["site"];
  readonly encodingText: string;
}

function finished(parts: Parts, answers: StationAnswers): Stop | Extract<Understood, { ok: true }> {
  const { axis, settled } = parts;
  const irrigation = irrigationDepth(settled.settled, answers);
  const kept = irrigation.columns.filter((column) => column !== undefined);
  if (axis.minutes.length === 0 || kept.length === 0)
    return fault("no-values", "", "no records", "must have records with a date and a value");
  const { minutes, columns } = tableColumns(kept, axis.minutes, axis.long);
  const start = answers["day-start"];
  const table: StationTable = {
    minutes,
    stepMinutes: axis.stepMinutes,
    utcOffsetMinutes: axis.utcOffsetMinutes,
    stamp: axis.stamp,
    dayStartMinutes: start === undefined ? 0 : Number(start.slice(0, 2)) * 60 + Number(start.slice(3)),
    columns,
  };
  const daily = dailyWeatherOf(table, {
    incompleteDays: answers["incomplete-days"] === "as-recorded" ? "as-recorded" : "missing",
    accumulated: answers.accumulated === "spread" ? "spread" : "reading-day",
    gaps: {
      ...(answers["fill-rain"] === "dry" ? { rain: "dry" as const } : {}),
      ...(answers["fill-temperature-days"] === undefined
        ? {}
        : { temperature: { kind: "interpolate" as const, longestDays: Number(answers["fill-temperature-days"]) } }),
    },
  });
  const names = new Map(
    kept.map((column, i) => [column.plan.index, axis.long === undefined ? columns[i].name : column.quantity]),
  );
  const reports = settled.raw.map((raw, i) =>
    columnReport(raw, irrigation.columns[i], names.get(raw.plan.index) ?? ""),
  );
  return { ok: true, table, daily, report: stationReport({ ...parts, table, reports, more: irrigation }) };
}
