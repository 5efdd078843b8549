import { isMissingCode } from "./missing-codes.js";
import type { RawColumn } from "./read-values.js";
import type { SettledColumn } from "./settle-column.js";
import { mark } from "./special-cell.js";
import type { ColumnReport } from "./station-report.js";

/** What a column was taken for, and how many of its cells are what. `settled` is undefined for a column that is not kept. */
export function columnReport(raw: RawColumn, settled: SettledColumn | undefined, keptAs: string): ColumnReport {
  const count = { missing: 0, trace: 0, accumulating: 0, censored: 0, suspect: 0, values: 0 };
  const { values, marks } = settled ?? raw;
  for (let i = 0; i < values.length; i++) {
    const one = marks[i];
    if (one === mark.accumulating) count.accumulating++;
    else if (Number.isNaN(values[i]) || (settled === undefined && values[i] <= -999 && isMissingCode(values[i]))) {
      if (settled !== undefined || one === mark.missing || !Number.isNaN(values[i])) count.missing++;
    } else {
      count.values++;
      if (one === mark.trace) count.trace++;
      else if (one === mark.above || one === mark.below) count.censored++;
      else if (one === mark.suspect) count.suspect++;
    }
  }
  return {
    header: raw.plan.header,
    keptAs,
    quantity: settled?.quantity,
    unit: settled?.unit.id ?? "",
    unitFrom: settled?.unitFrom ?? "none",
    ...count,
    words: Object.fromEntries(raw.words),
  };
}
