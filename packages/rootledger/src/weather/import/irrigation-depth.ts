import type { StationAnswers } from "./answers.js";
import type { SettledColumn } from "./settle-column.js";
import { mark } from "./special-cell.js";
import type { Caution, Repair } from "./station-report.js";

export interface Irrigation {
  readonly columns: readonly (SettledColumn | undefined)[];
  readonly repairs: readonly Repair[];
  readonly cautions: readonly Caution[];
}

/**
 * Irrigation columns: an empty cell of a daily sheet means that none was given, and this is counted; cubic metres become mm only with the area of the block: 1 m3 on 1000 m2 is 1 mm.
 */
export function irrigationDepth(settled: readonly (SettledColumn | undefined)[], answers: StationAnswers): Irrigation {
  const repairs: Repair[] = [];
  const cautions: Caution[] = [];
  const areaM2 = answers["block-area-m2"] === undefined ? Number.NaN : Number(answers["block-area-m2"]);
  const columns = settled.map((column) => {
    if (column === undefined || !column.quantity.startsWith("irrigation")) return column;
    let empty = 0;
    for (let i = 0; i < column.values.length; i++) {
      if (!Number.isNaN(column.values[i])) continue;
      column.values[i] = 0;
      column.marks[i] = mark.value;
      empty++;
    }
    const { header } = column.plan;
    if (empty > 0)
      repairs.push({
        code: "gap-filled",
        column: header,
        count: empty,
        what: "empty cells: no irrigation given, taken as 0",
        lines: [],
      });
    if (column.quantity !== "irrigationM3") return column;
    if (!(areaM2 > 0)) {
      cautions.push({
        code: "not-converted",
        column: header,
        what: "a volume is not turned into mm without the area of the block (answer block-area-m2)",
      });
      return column;
    }
    return { ...column, quantity: "irrigationMm" as const, values: column.values.map((m3) => (m3 / areaM2) * 1000) };
  });
  return { columns, repairs, cautions };
}
