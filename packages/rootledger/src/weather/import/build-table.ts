import type { LongTable } from "./series-of-rows.js";
import type { SettledColumn } from "./settle-column.js";
import { mark } from "./special-cell.js";
import type { StationColumn } from "./station-table.js";

/** Series of the table from the columns of the file: one each, or in a long table one for each depth or probe. */
export function tableColumns(
  settled: readonly SettledColumn[],
  minutes: Float64Array,
  long: LongTable | undefined,
): { readonly minutes: Float64Array; readonly columns: readonly StationColumn[] } {
  if (long === undefined) {
    const columns = settled.map((one) => ({
      ...one,
      depthCm: one.plan.depthCm,
      header: one.plan.header,
      sensorChanges: [],
    }));
    return { minutes, columns: named(columns) };
  }
  const times = Float64Array.from(new Set(minutes));
  const at = new Map<number, number>();
  for (let place = 0; place < times.length; place++) at.set(times[place], place);
  const columns = settled.flatMap((one) =>
    [...long.depthsCm].map(([key, depthCm]) => ofSeries(one, key, depthCm, long, minutes, at)),
  );
  return { minutes: times, columns: named(columns) };
}

type Unnamed = Omit<StationColumn, "name">;

function ofSeries(
  { plan, quantity, values, marks }: SettledColumn,
  key: string,
  depthCm: number | undefined,
  long: LongTable,
  minutes: Float64Array,
  at: ReadonlyMap<number, number>,
): Unnamed {
  const own = new Float64Array(at.size).fill(Number.NaN);
  const ownMarks = new Uint8Array(at.size).fill(mark.missing);
  const sensorChanges: { minutes: number; from: string; to: string }[] = [];
  let probe: string | undefined;
  for (let i = 0; i < values.length; i++) {
    if (long.keys[i] !== key) continue;
    const place = at.get(minutes[i]) ?? 0;
    own[place] = values[i];
    ownMarks[place] = marks[i];
    const now = long.probes[i];
    if (probe !== undefined && now !== undefined && now !== probe)
      sensorChanges.push({ minutes: minutes[i], from: probe, to: now });
    probe = now;
  }
  return { quantity, depthCm, header: `${plan.header} ${key}`.trim(), values: own, marks: ownMarks, sensorChanges };
}

/** Names with depth, and a number where one would stand twice. */
function named(columns: readonly Unnamed[]): StationColumn[] {
  const count = new Map<string, number>();
  return columns.map(({ quantity, depthCm, header, values, marks, sensorChanges }) => {
    const base = depthCm === undefined ? quantity : `${quantity}_${depthCm}cm`;
    const number = (count.get(base) ?? 0) + 1;
    count.set(base, number);
    return { name: number === 1 ? base : `${base}_${number}`, quantity, depthCm, header, values, marks, sensorChanges };
  });
}
