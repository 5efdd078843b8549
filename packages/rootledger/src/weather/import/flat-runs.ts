import type { QuantityName } from "./quantity.js";
import type { SettledColumn } from "./settle-column.js";

/** Quantities of the air that never stand still for a week of days or a day of shorter records. */
const restless: ReadonlySet<QuantityName> = new Set([
  "tMinC",
  "tMaxC",
  "tMeanC",
  "rhMinPct",
  "rhMaxPct",
  "rhMeanPct",
  "dewPointC",
  "windMPerS",
  "solarMJPerM2",
  "pressureKPa",
  "vapourPressureKPa",
]);

export interface FlatRun {
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

/**
 * Runs of one and the same value, the sign of a stuck sensor: seven days of daily records, or a day and at least eight shorter ones. Own rule.
 * Saturated air, calm, and nights without sun are left out.
 */
export function flatRuns(
  { quantity, values }: Pick<SettledColumn, "quantity" | "values">,
  stepMinutes: number,
): FlatRun[] {
  if (!restless.has(quantity)) return [];
  const least = stepMinutes >= 1440 ? 7 : Math.max(8, Math.ceil(1440 / stepMinutes));
  const natural = (value: number): boolean => value === 0 || (value === 100 && quantity.startsWith("rh"));
  const runs: FlatRun[] = [];
  let from = 0;
  for (let i = 1; i <= values.length; i++) {
    if (i < values.length && values[i] === values[from]) continue;
    if (i - from >= least && !Number.isNaN(values[from]) && !natural(values[from]))
      runs.push({ from, to: i - 1, value: values[from] });
    from = i;
  }
  return runs;
}
