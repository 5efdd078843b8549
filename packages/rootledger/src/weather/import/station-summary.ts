import type { Irrigation } from "./irrigation-depth.js";
import { quantities } from "./quantity.js";
import type { Grid } from "./read-grid.js";
import type { SettledFile } from "./settle-all.js";
import type { StationFile } from "./station-file.js";
import type { Caution, ColumnReport, StationReport } from "./station-report.js";
import type { StationTable } from "./station-table.js";
import { stationTime } from "./station-time.js";
import type { TimeAxis } from "./time-axis.js";

interface Parts {
  readonly grid: Grid;
  readonly file: StationFile;
  readonly axis: TimeAxis;
  readonly settled: SettledFile;
  readonly site: StationReport["site"];
  readonly encodingText: string;
  readonly table: StationTable;
  readonly reports: readonly ColumnReport[];
  readonly more: Irrigation;
}

const mostRejectedShown = 50;

/** Few stations average more wind over their record; knots or km/h read as m/s do. Own choice. */
const windyMPerS = 8;

/** Everything that was understood of a file, in one report. */
export function stationReport({
  grid,
  file,
  axis,
  settled,
  site,
  encodingText,
  table,
  reports,
  more,
}: Parts): StationReport {
  const { minutes, stepMinutes, utcOffsetMinutes, columns } = table;
  const last = minutes.length - 1;
  const rejected = [...file.rejected.first, ...axis.rejected].sort((a, b) => a.line - b.line);
  const expected = Math.round((minutes[last] - minutes[0]) / stepMinutes) + 1;
  const sensors = columns.flatMap(({ name, sensorChanges }) =>
    sensorChanges.map(
      ({ minutes: at, from, to }): Caution => ({
        code: "sensor-change",
        column: name,
        what: `${to} takes the place of ${from} from ${stationTime(at)}: a step there is no event`,
      }),
    ),
  );
  return {
    encoding: encodingText,
    layout: file.layout?.name ?? grid.layout,
    delimiter: grid.delimiter,
    decimal: file.style.decimal === "," ? "comma" : "point",
    thousands: file.style.thousands,
    headerLines: Math.max(0, grid.rows.line(file.block.firstRecord) - 1),
    dates: file.stamps.written,
    utcOffsetH: utcOffsetMinutes === undefined ? undefined : utcOffsetMinutes / 60,
    stamp: table.stamp,
    records: axis.rows.length,
    first: stationTime(minutes[0]),
    last: stationTime(minutes[last]),
    stepMinutes,
    absentStamps: Math.max(0, expected - minutes.length),
    clockChanges: axis.clockChanges,
    columns: reports,
    site,
    assumptions: [
      ...file.stamps.assumptions,
      ...axis.assumptions,
      ...settled.settled.flatMap((column) => column?.assumptions ?? []),
    ],
    repairs: [...grid.repairs, ...file.body.repairs, ...axis.repairs, ...settled.repairs, ...more.repairs],
    cautions: [...settled.cautions, ...more.cautions, ...sensors, ...windCautions(table, site), ...twinCautions(table)],
    rejectedRows: rejected.slice(0, mostRejectedShown),
    rejectedCount: file.rejected.count + axis.rejected.length,
    preview: preview(table),
  };
}

function windCautions({ columns }: StationTable, site: StationReport["site"]): Caution[] {
  const wind = columns.find(({ quantity }) => quantity === "windMPerS");
  if (wind === undefined) return [];
  const cautions: Caution[] = [];
  if (site.windHeightM === undefined) {
    const what = "the file does not say at which height it is measured: 2 m and 10 m are usual";
    cautions.push({ code: "wind-height", column: wind.header, what });
  }
  let sum = 0;
  let count = 0;
  for (const value of wind.values) {
    if (Number.isNaN(value)) continue;
    sum += value;
    count++;
  }
  if (sum / count > windyMPerS) {
    const what = `mean ${(sum / count).toFixed(1)} m/s; check that it is not in km/h or knots`;
    cautions.push({ code: "wind-unit", column: wind.header, what });
  }
  return cautions;
}

/** Days are made from one column of a kind; a second one is kept among the records only. */
function twinCautions({ columns }: StationTable): Caution[] {
  const seen = new Set<string>();
  return columns.flatMap(({ quantity, header }): Caution[] => {
    if (quantities[quantity].soil || !seen.has(quantity)) {
      seen.add(quantity);
      return [];
    }
    return [
      { code: "second-column", column: header, what: `a second column of ${quantity}: days are made from the first` },
    ];
  });
}

/** The first five records in words: time, then name and value. */
const preview = ({ minutes, columns }: StationTable): string[] =>
  Array.from({ length: Math.min(5, minutes.length) }, (_, i) => {
    const values = columns
      .slice(0, 12)
      .map(({ name, values }) => `${name} ${Number.isNaN(values[i]) ? "-" : Number(values[i].toPrecision(6))}`);
    return `${stationTime(minutes[i])}: ${values.join(", ")}`;
  });
