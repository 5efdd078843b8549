import type { SettledColumn } from "./settle-column.js";
import { mark } from "./special-cell.js";

/** Water in the soil starts to freeze at about this temperature of the sensor; its moisture reading then falls without drying. */
const frozenC = 0.5;

/** Marks moisture in freezing soil as suspect, by the soil temperature of the same depth or, without one, of any depth. Rows marked. */
export function markFrozen(
  column: SettledColumn,
  depthCm: number | undefined,
  temperatures: readonly SettledColumn[],
): number[] {
  const same = temperatures.filter(({ plan }) => plan.depthCm === depthCm);
  const used = same.length > 0 ? same : temperatures;
  const rows: number[] = [];
  for (let i = 0; i < column.values.length; i++) {
    if (Number.isNaN(column.values[i]) || !used.some(({ values }) => values[i] <= frozenC)) continue;
    if (column.marks[i] !== mark.value) continue;
    column.marks[i] = mark.suspect;
    rows.push(i);
  }
  return rows;
}

/** A tensiometer that reads 0 in a row with a note has been refilled or was dry, not wet soil. Rows marked. */
export function markNotedZeros(column: SettledColumn, hasNote: (row: number) => boolean): number[] {
  const rows: number[] = [];
  for (let i = 0; i < column.values.length; i++) {
    if (column.values[i] !== 0 || !hasNote(i)) continue;
    column.marks[i] = mark.suspect;
    rows.push(i);
  }
  return rows;
}
