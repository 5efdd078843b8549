import type { GeneratorFit, MonthOfRain, NormalVariable } from "./generator-fit.js";
import { fitHarmonic, type Harmonic } from "./harmonic.js";
import { chainOfWetFraction } from "./rain-chain.js";
import { publishedCorrelations, residualProcess } from "./residual-process.js";

/** Figures of one month as climate tables print them. */
export interface MonthlyFigures {
  /** Mean total of the month. */
  readonly rainMm: number;
  /** Mean number of days with rain, above 0 where there is rain, up to the days of the month. */
  readonly wetDays: number;
  readonly tMinC: number;
  readonly tMaxC: number;
  /** Mean of a day; left out, no radiation is generated. */
  readonly solarMJPerM2?: number;
  /** Standard deviation of single days about the month's mean; default 4 C for the maximum, 3.5 C for the minimum, a quarter of the mean for radiation. Own choices for temperate and subtropical places, no source. */
  readonly tMaxDeviationC?: number;
  readonly tMinDeviationC?: number;
  readonly solarDeviationMJPerM2?: number;
}

const daysOfMonth = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const wetDayMm = 0.1;

/**
 * A generator from twelve months of printed figures. Wet and dry days by the share of wet days (`chainOfWetFraction`); amounts gamma with scale -2.16 + 1.83 x (mean of a wet day), mm, where that mean is at least
 * 2.6 mm, below exponential (Geng et al. 1986, Agricultural and Forest Meteorology 36:363-376; from memory); residuals by the mean correlations of Richardson & Wright (1984). Wet days are as warm and sunny as
 * dry ones, since tables do not tell them apart. What `fitGenerator` says of the spread between years holds here too.
 *
 * @throws RangeError unless there are twelve months of finite figures with tMinC <= tMaxC and wetDays within the month
 * @example fitMonthlyFigures(twelveMonths).months.length // 12
 */
export function fitMonthlyFigures(months: readonly MonthlyFigures[]): GeneratorFit {
  if (months.length !== 12) throw new RangeError(`fitMonthlyFigures requires twelve months: got ${months.length}`);
  months.forEach(checkMonth);
  const withSun = months.every(({ solarMJPerM2 }) => solarMJPerM2 !== undefined);
  const temperatures = [
    variable(
      "tMaxC",
      months.map(({ tMaxC }) => tMaxC),
      months.map(({ tMaxDeviationC }) => tMaxDeviationC ?? 4),
    ),
    variable(
      "tMinC",
      months.map(({ tMinC }) => tMinC),
      months.map(({ tMinDeviationC }) => tMinDeviationC ?? 3.5),
    ),
  ];
  const means = months.map(({ solarMJPerM2 }) => solarMJPerM2 ?? 0);
  const sun = variable(
    "solarMJPerM2",
    means,
    months.map(({ solarDeviationMJPerM2 }, m) => solarDeviationMJPerM2 ?? means[m] / 4),
  );
  // Clear days of a month have seldom more than half again its mean; own choice.
  const bounded = { ...sun, lowest: means.map((mean) => 0.1 * mean), highest: means.map((mean) => 1.6 * mean) };
  const drawn = withSun ? [...temperatures, bounded] : temperatures;
  const cut = (matrix: readonly (readonly number[])[]): number[][] =>
    matrix.slice(0, drawn.length).map((row) => row.slice(0, drawn.length));
  const process = residualProcess(cut(publishedCorrelations.m0), cut(publishedCorrelations.m1));
  if (process === undefined) throw new RangeError("the published correlations require a process: got none");
  return { wetDayMm, months: months.map(rainOf), drawn, process, following: [] };
}

function checkMonth({ rainMm, wetDays, tMinC, tMaxC }: MonthlyFigures, month: number): void {
  const most = Math.ceil(daysOfMonth[month]);
  const good = rainMm >= 0 && wetDays >= 0 && wetDays <= most && tMinC <= tMaxC && (rainMm === 0 || wetDays > 0);
  if (!good || !Number.isFinite(rainMm + tMinC + tMaxC)) {
    const got = JSON.stringify({ rainMm, wetDays, tMinC, tMaxC });
    throw new RangeError(
      `fitMonthlyFigures requires month ${month + 1} to have rain on its wet days and tMinC <= tMaxC: got ${got}`,
    );
  }
}

function rainOf({ rainMm, wetDays }: MonthlyFigures, month: number): MonthOfRain {
  const chain = chainOfWetFraction(wetDays / daysOfMonth[month]);
  if (rainMm === 0) return { wetAfterDry: 0, wetAfterWet: 0, shape: 1, scaleMm: 0 };
  const mean = Math.max(rainMm / wetDays - wetDayMm, 0.01);
  const scaleMm = mean < 2.6 ? mean : -2.16 + 1.83 * mean;
  return { ...chain, shape: mean / scaleMm, scaleMm };
}

/** Courses through the middles of the twelve months. */
function variable(
  column: NormalVariable["column"],
  means: readonly number[],
  deviations: readonly number[],
): NormalVariable {
  const side = {
    mean: through(means, 3),
    variance: through(
      deviations.map((one) => one * one),
      1,
    ),
  };
  return { kind: "normal", column, dry: side, wet: side, lowest: [], highest: [] };
}

function through(monthly: readonly number[], harmonics: number): Harmonic {
  const values = new Float64Array(365);
  const dayOfYear = new Int16Array(365);
  let month = 0;
  let end = 31;
  for (let d = 0; d < 365; d++) {
    if (d >= end && month < 11) {
      month++;
      end += Math.floor(daysOfMonth[month]);
    }
    values[d] = monthly[month];
    dayOfYear[d] = d + 1;
  }
  return fitHarmonic(values, dayOfYear, () => true, harmonics);
}
