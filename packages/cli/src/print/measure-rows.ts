import type { Result } from "rootledger";

/** How one measure is printed: `factor` turns the library's unit into the printed one. */
export interface MeasureRow {
  readonly id: string;
  readonly label: string;
  /** The label's last part, for sentences. */
  readonly unit: string;
  readonly factor: number;
  readonly decimals: number;
  /** Told among the differences; the others follow from these. */
  readonly told: boolean;
}

const row = (id: string, label: string, unit: string, decimals: number, told = false, factor = 1): MeasureRow => ({
  ...{ id, label, unit, factor, decimals, told },
});

/** The measures in the order of the tables. */
export const measureRows: readonly MeasureRow[] = [
  row("applied", "Water applied", "L per tree", 0),
  row("applied-at-valve", "Through the valve", "L per tree", 0),
  row("applied-depth", "Water applied", "mm", 1),
  row("transpiration-wanted", "Transpiration wanted", "L per tree", 0),
  row("transpiration", "Transpiration got", "L per tree", 0),
  row("transpiration-ratio", "Transpiration got", "% of wanted", 1, true, 100),
  row("thirsty", "Thirsty", "root-hours", 0, true),
  row("fine", "Fine", "root-hours", 0, true),
  row("airless", "Airless", "root-hours", 0, true),
  row("thirsty-severity", "Thirst severity", "root-hours", 0),
  row("airless-severity", "Airless severity", "root-hours", 0),
  row("longest-thirsty", "Longest thirsty spell", "h", 0, true),
  row("longest-airless", "Longest airless spell", "h", 0, true),
  row("below-roots-depth", "Below roots", "mm", 0, true),
  row("below-roots-share", "Below roots", "% of water in", 1, false, 100),
  row("evaporation", "Evaporation", "L per tree", 0, true),
  row("runoff", "Run-off", "L per tree", 0, true),
  row("window-low-point", "Lowest water", "% of window", 0, true, 100),
  row("pump-starts", "Pump starts", "", 0),
  row("storage-change", "Storage change", "L per tree", 0),
  row("root-zone-ece", "ECe of the roots, season", "dS/m", 2, true),
  row("root-zone-ece-end", "ECe of the roots, end", "dS/m", 2, true),
  row("uptake-ece", "ECe where water was drawn", "dS/m", 2),
  row("leaching-fraction", "Leaching fraction", "% of water in soil", 1, true, 100),
  row("salt-held-back", "Held back by salt", "root-hours", 0, true),
  row("salt-with-water", "Salt with the water", "g per tree", 0),
  row("salt-below-roots", "Salt below roots", "g per tree", 0, true),
  row("salt-storage-change", "Salt stored", "g per tree", 0, true),
  row("nitrogen-given", "Nitrogen given", "g per tree", 1, true),
  row("nitrogen-taken-up", "Nitrogen taken up", "g per tree", 1, true),
  row("nitrogen-below-roots", "Nitrogen below roots", "g per tree", 1, true),
  row("nitrogen-rootless-ground", "On ground without roots", "g N per tree", 1, true),
  row("nitrogen-left", "Nitrogen left", "g per tree", 1),
];

/** The rows of what a result has. @example rowsOf(result).length */
export const rowsOf = ({ measures }: Pick<Result, "measures">): readonly MeasureRow[] =>
  measureRows.filter((one) => measures.some(({ id }) => id === one.id));

/** A value in the row's printed unit. @example printed(row, 0.677) // "67.7" */
export function printed(row: MeasureRow, value: number): string {
  if (!Number.isFinite(value)) return "-";
  const text = (value * row.factor).toFixed(row.decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/** @example title(row) // "Water applied, mm" */
export const title = ({ label, unit }: MeasureRow): string => (unit === "" ? label : `${label}, ${unit}`);
