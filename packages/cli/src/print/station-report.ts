import type { DailyOfTable, DailyWeather, StationReport } from "rootledger/weather";
import { stationWords } from "../words.js";
import { textTable, wrapped } from "./text-table.js";

/** What was understood of a file, as text. */
export function stationText(file: string, report: StationReport, daily: DailyOfTable | undefined): string {
  return [
    wrapped(`${file}`),
    wrapped(howWritten(report), "  "),
    wrapped(records(report), "  "),
    site(report),
    `\n${columnTable(report)}`,
    list(
      stationWords.assumed,
      report.assumptions.map(({ key, taken, because }) => `${key === "" ? "" : `${key}: `}${taken} (${because})`),
    ),
    list(
      stationWords.changed,
      report.repairs.map(
        ({ column, count, what, lines }) => `${named(column)}${what}: ${count}${linesText(lines, count)}`,
      ),
    ),
    list(
      stationWords.rejected,
      report.rejectedRows.map(({ line, text, reason }) => `${stationWords.line} ${line}: ${text} (${reason})`),
      report.rejectedCount,
    ),
    list(
      stationWords.lookAt,
      report.cautions.map(({ column, what }) => `${named(column)}${what}`),
    ),
    daily === undefined ? `\n${stationWords.noDays}\n` : daysText(daily),
    list(stationWords.preview, report.preview),
  ].join("");
}

const mostLines = 12;

function list(title: string, entries: readonly string[], count = entries.length): string {
  if (entries.length === 0) return "";
  const shown = entries.slice(0, mostLines);
  const rest = count > shown.length ? `  ... ${count - shown.length} ${stationWords.more}\n` : "";
  return `\n${title}\n${shown.map((entry) => wrapped(entry, "    ", "  ")).join("")}${rest}`;
}

const named = (column: string): string => (column === "" ? "" : `${column}: `);

const linesText = (lines: readonly number[], count: number): string => {
  if (lines.length === 0) return "";
  const more = count > lines.length ? ", ..." : "";
  return ` (${lines.length === 1 && more === "" ? stationWords.line : stationWords.lines} ${lines.join(", ")}${more})`;
};

function howWritten({ layout, encoding, delimiter, decimal, thousands, headerLines, dates }: StationReport): string {
  return [
    layout,
    encoding,
    ...(delimiter === "" ? [] : [`${stationWords.partedBy} ${delimiter}`]),
    `${stationWords.decimal} ${decimal}`,
    ...(thousands === "" ? [] : [`${stationWords.thousands} "${thousands}"`]),
    `${headerLines} ${stationWords.headerLines}`,
    `${stationWords.dates} ${dates}`,
  ].join("; ");
}

function records({
  records: count,
  first,
  last,
  stepMinutes,
  absentStamps,
  utcOffsetH,
  stamp,
  clockChanges,
}: StationReport): string {
  const step = stepMinutes % 1440 === 0 ? `${stepMinutes / 1440} d` : `${stepMinutes} min`;
  const daily = stamp === "day" && first.endsWith("T00:00");
  const at = (time: string): string => (daily ? time.slice(0, 10) : time.replace("T", " "));
  const zone =
    utcOffsetH === undefined ? stationWords.localClock : `UTC${utcOffsetH < 0 ? "-" : "+"}${Math.abs(utcOffsetH)}`;
  const changes = clockChanges.map(
    ({ date, kind, recordsByTheClock }) =>
      `${stationWords.clock[kind]} ${date} (${recordsByTheClock} ${stationWords.thatDay})`,
  );
  return [
    `${count} ${stationWords.records} ${at(first)} ${stationWords.to} ${at(last)}, ${stationWords.every} ${step}`,
    `${absentStamps} ${stationWords.absent}`,
    ...(daily ? [] : [zone, stationWords.stamp[stamp]]),
    ...changes,
  ].join("; ");
}

function site({ site: { name, latitudeDeg, longitudeDeg, elevationM, windHeightM } }: StationReport): string {
  const parts = [
    ...(name === undefined ? [] : [name]),
    ...(latitudeDeg === undefined ? [] : [`${stationWords.latitude} ${latitudeDeg}`]),
    ...(longitudeDeg === undefined ? [] : [`${stationWords.longitude} ${longitudeDeg}`]),
    ...(elevationM === undefined ? [] : [`${elevationM} m`]),
    ...(windHeightM === undefined ? [] : [`${stationWords.windAt} ${windHeightM} m`]),
  ];
  return parts.length === 0 ? "" : wrapped(`${stationWords.site} ${parts.join(", ")}`, "  ");
}

const widestHeader = 30;

function columnTable({ columns }: StationReport): string {
  const kept = columns.filter(({ keptAs }) => keptAs !== "");
  const left = columns.filter(({ keptAs, header }) => keptAs === "" && header !== "").map(({ header }) => header);
  const rows = kept.map(
    ({ header, keptAs, unit, unitFrom, values, missing, trace, accumulating, censored, suspect }) => [
      header.length > widestHeader ? `${header.slice(0, widestHeader - 3)}...` : header,
      keptAs,
      `${unit} (${unitFrom})`,
      String(values),
      String(missing),
      String(trace + accumulating + censored + suspect),
    ],
  );
  const table = textTable("", [], [stationWords.columnHeads, ...rows]).trimStart();
  return left.length === 0
    ? table
    : table + wrapped(`${stationWords.notKept}: ${left.join(", ").slice(0, 500)}`, "  ", "");
}

const daysText = ({ weather, notes }: DailyOfTable): string =>
  list(
    `${stationWords.days}: ${weather.days}, ${stationWords.from} ${weather.startDate}`,
    notes.length === 0 ? [stationWords.nothingLeftOut] : notes,
  );

/** The days of several files together. */
export const joinedText = (weather: DailyWeather, notes: readonly string[]): string =>
  list(`${stationWords.joined}: ${weather.days} ${stationWords.daysFrom} ${weather.startDate}`, notes).trimStart();
