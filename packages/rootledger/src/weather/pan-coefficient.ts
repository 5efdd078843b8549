import { panFetchesM, panTable } from "./pan-table.js";

/** What lies upwind of the pan: short green crop (FAO-56 case A) or dry, bare ground (case B). */
export type PanSiting = "green" | "dry";

/** The surroundings and air of an evaporation pan. */
export interface PanSite {
  readonly siting: PanSiting;
  /** How far that ground reaches upwind, m. */
  readonly fetchM: number;
  readonly windAt2mMPerS: number;
  readonly rhMeanPct: number;
}

/** Upper ends of FAO-56's wind classes but the last, m/s; a class ends with its upper figure. */
const windClassesMPerS: readonly number[] = [2, 5, 8];

/**
 * Class A pan coefficient from the table. Source: FAO-56 table 5. Between the printed fetches it is linear in the logarithm of
 * the fetch (our choice: the table is even in it), beyond 1000 m that of 1000 m; classes of wind and humidity are not blended.
 *
 * @throws RangeError if the fetch is under 1 m, the wind negative or the humidity not 0 to 100.
 * @example panCoefficientFromTable({ siting: "green", fetchM: 1000, windAt2mMPerS: 1.9, rhMeanPct: 73 }) // 0.85
 */
export function panCoefficientFromTable(site: PanSite): number {
  const name = "panCoefficientFromTable";
  checkWithin(name, "fetchM", site.fetchM, 1, Number.POSITIVE_INFINITY);
  checkWithin(name, "windAt2mMPerS", site.windAt2mMPerS, 0, Number.POSITIVE_INFINITY);
  checkWithin(name, "rhMeanPct", site.rhMeanPct, 0, 100);
  const windClass = windClassesMPerS.filter((limit) => site.windAt2mMPerS > limit).length;
  const humidityClass = site.rhMeanPct < 40 ? 0 : site.rhMeanPct <= 70 ? 1 : 2;
  const rows = panTable[site.siting][windClass];
  const place = Math.log10(Math.min(site.fetchM, panFetchesM[3]));
  const row = Math.min(Math.floor(place), 2);
  const low = rows[row][humidityClass];
  const high = rows[row + 1][humidityClass];
  return place === row + 1 ? high : low + (high - low) * (place - row);
}

/**
 * Class A pan coefficient from the regressions on that table. Source: FAO-56 table 6, from memory. Fitted to 1 to 1000 m of
 * fetch, 1 to 8 m/s and 30 to 84 % of mean humidity.
 *
 * @throws RangeError outside those ranges.
 * @example panCoefficientFromRegression({ siting: "green", fetchM: 1000, windAt2mMPerS: 1.9, rhMeanPct: 73 }) // 0.83
 */
export function panCoefficientFromRegression(site: PanSite): number {
  const name = "panCoefficientFromRegression";
  const { siting, fetchM, windAt2mMPerS: u2, rhMeanPct: rh } = site;
  checkWithin(name, "fetchM", fetchM, 1, 1000);
  checkWithin(name, "windAt2mMPerS", u2, 1, 8);
  checkWithin(name, "rhMeanPct", rh, 30, 84);
  const lnFetch = Math.log(fetchM);
  if (siting === "green") {
    const lnRh = Math.log(rh);
    return 0.108 - 0.0286 * u2 + 0.0422 * lnFetch + 0.1434 * lnRh - 0.000631 * lnFetch * lnFetch * lnRh;
  }
  const lnRun = Math.log(86.4 * u2);
  return (
    0.61 +
    0.00341 * rh -
    0.000162 * u2 * rh -
    0.00000959 * u2 * fetchM +
    0.00327 * u2 * lnFetch -
    0.00289 * u2 * lnRun -
    0.0106 * lnRun * lnFetch +
    0.00063 * lnFetch * lnFetch * lnRun
  );
}

/** Reference evapotranspiration from a pan, mm/day: Kp Epan. Source: FAO-56 eq. 55. @example et0PanMmPerDay(7.9, 0.85) // 6.7 */
export const et0PanMmPerDay = (panMm: number, panCoefficient: number): number => panCoefficient * panMm;

function checkWithin(name: string, argument: string, value: number, lowest: number, highest: number): void {
  if (value >= lowest && value <= highest) return;
  throw new RangeError(`${name} requires ${argument} ${lowest} to ${highest}: got ${value}`);
}
