import type { MonthOfRain } from "./generator-fit.js";

/** Wet days of a month below which its amounts borrow their spread from the months around it. Own choice. */
const fewWetDays = 10;

/** Counts and amounts of one month of the year over all years. */
interface MonthCounts {
  readonly afterDry: { days: number; wet: number };
  readonly afterWet: { days: number; wet: number };
  readonly excessMm: number[];
}

export interface RainFit {
  readonly months: readonly MonthOfRain[];
  readonly notes: readonly string[];
}

/**
 * Fits the chain and the amounts of each month of the year. Probabilities are shares of the days counted; amounts above the wet-day limit are gamma by moments, so
 * that mean and variance of the record are kept (maximum likelihood, as published, keeps the mean alone).
 */
export function fitRain(rainMm: Float64Array, monthOf: Uint8Array, wetDayMm: number): RainFit {
  const counts = countMonths(rainMm, monthOf, wetDayMm);
  const notes: string[] = [];
  const months = counts.map(({ afterDry, afterWet, excessMm }, month): MonthOfRain => {
    const wetAfterDry = afterDry.days === 0 ? 0 : afterDry.wet / afterDry.days;
    const wetAfterWet = afterWet.days === 0 ? wetAfterDry : afterWet.wet / afterWet.days;
    const around = excessMm.length >= fewWetDays ? excessMm : borrowed(counts, month);
    if (around !== excessMm)
      notes.push(
        `rainMm: month ${month + 1} has ${excessMm.length} wet days; the spread of their amounts is that of the months around it`,
      );
    const spread = moments(around);
    const mean = excessMm.length >= 3 ? moments(excessMm).mean : spread.mean;
    const squaredVariation = spread.mean > 0 && spread.variance > 0 ? spread.variance / (spread.mean * spread.mean) : 1;
    return { wetAfterDry, wetAfterWet, shape: 1 / squaredVariation, scaleMm: mean * squaredVariation };
  });
  return { months, notes };
}

function countMonths(rainMm: Float64Array, monthOf: Uint8Array, wetDayMm: number): MonthCounts[] {
  const counts = Array.from(
    { length: 12 },
    (): MonthCounts => ({ afterDry: { days: 0, wet: 0 }, afterWet: { days: 0, wet: 0 }, excessMm: [] }),
  );
  for (let d = 0; d < rainMm.length; d++) {
    const mm = rainMm[d];
    if (Number.isNaN(mm)) continue;
    const month = counts[monthOf[d]];
    const wet = mm >= wetDayMm;
    if (wet) month.excessMm.push(mm - wetDayMm);
    const before = d === 0 ? Number.NaN : rainMm[d - 1];
    if (Number.isNaN(before)) continue;
    const after = before >= wetDayMm ? month.afterWet : month.afterDry;
    after.days++;
    if (wet) after.wet++;
  }
  return counts;
}

/** Amounts of the month and of as many months on both sides as it takes. */
function borrowed(counts: readonly MonthCounts[], month: number): readonly number[] {
  for (let reach = 1; reach <= 6; reach++) {
    const amounts: number[] = [];
    for (let k = -reach; k <= reach && k < 12 - reach; k++) amounts.push(...counts[(month + k + 12) % 12].excessMm);
    if (amounts.length >= fewWetDays || reach === 6) return amounts;
  }
  return [];
}

function moments(values: readonly number[]): { readonly mean: number; readonly variance: number } {
  if (values.length === 0) return { mean: 0, variance: 0 };
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  return { mean, variance: values.length < 2 ? 0 : squares / (values.length - 1) };
}
