/** Sums over the season of one tree; places in `sums`. */
export const seasonSums = {
  /** Hours times the mean ECe of the roots, dS/m h. */
  rootEceH: 0,
  /** Water drawn times the ECe it was drawn at, dS/m cm3, and water drawn. */
  drawnEce: 1,
  drawnCm3: 2,
  /** Root-hours times what salt leaves not. */
  heldBackH: 3,
  enteredCm3: 4,
  belowRootsCm3: 5,
} as const;
export const seasonSumsSize = 6;

/** Mean of a value of the cells over the roots. @example rootMean(eceDsPerM, roots.share) */
export function rootMean(values: Float64Array, share: Float64Array): number {
  let sum = 0;
  for (let c = 0; c < values.length; c++) sum += share[c] * values[c];
  return sum;
}
