import { saltMgPerLPerDsPerM } from "../units.js";
import { type InjectionTimes, shortestFertigatedRunMinutes, usualInjection } from "./fertigation.js";

/** Fertiliser given through the lines of a sector in one run. */
export interface FertigationQuestion {
  /** Grams for each tree, by nutrient as the label counts it, for instance N, P2O5, K2O. */
  readonly gramsPerTree: Readonly<Record<string, number>>;
  readonly trees: number;
  /** Water of the run at each tree, L, and how long it runs. */
  readonly litresPerTree: number;
  readonly runMinutes: number;
  readonly times?: InjectionTimes;
  /** Conductivity of the water before anything is added, dS/m. */
  readonly waterEcDsPerM: number;
  /** Conductivity from which irrigation water troubles the crop, dS/m; default 0.75, avocado. */
  readonly troubleEcDsPerM?: number;
}

/** A dose and how it goes through the lines. */
export interface FertigationDose {
  readonly kgPerSector: Readonly<Record<string, number>>;
  /** Over all water of the run. */
  readonly mgPerL: Readonly<Record<string, number>>;
  /** While the injector runs; the lines carry it only then. */
  readonly mgPerLInjecting: Readonly<Record<string, number>>;
  /** The least conductivity of the water while the injector runs, dS/m: nutrients alone, what comes with them not counted. */
  readonly leastEcDsPerM: number;
  /** When the injector starts and stops, minutes after the valve opens; the rest of the run flushes. */
  readonly injectFromMinutes: number;
  readonly injectToMinutes: number;
  readonly flushMinutes: number;
  readonly warnings: readonly FertigationWarning[];
}

/** What is wrong with a dose. */
export type FertigationWarning =
  | { readonly code: "too-concentrated"; readonly leastEcDsPerM: number; readonly troubleEcDsPerM: number }
  | { readonly code: "run-too-short"; readonly runMinutes: number; readonly shortestMinutes: number };

/** Irrigation water troublesome for avocado beyond this, dS/m. Source: Crowley (2008), California Avocado Society Yearbook 91. */
export const avocadoTroubleEcDsPerM = 0.75;

/**
 * One fertigation: kg for the sector, mg/L in the water, when to inject and flush, and what to look at first. Backflow comes
 * before anything else: check valve, low-pressure drain, air relief and an interlock that stops the injector with the pump;
 * labels, local codes and licensed practice decide.
 *
 * @throws RangeError if a dose is negative, or water, trees or minutes are not above 0.
 * @example fertigationDose({ gramsPerTree: { N: 4 }, trees: 100, litresPerTree: 40, runMinutes: 150, waterEcDsPerM: 0.3 }).mgPerL.N // 100
 */
export function fertigationDose(question: FertigationQuestion): FertigationDose {
  const { gramsPerTree, trees, litresPerTree, runMinutes, waterEcDsPerM, times = usualInjection } = question;
  const { troubleEcDsPerM = avocadoTroubleEcDsPerM } = question;
  if (!(trees > 0 && litresPerTree > 0 && runMinutes > 0 && waterEcDsPerM >= 0)) {
    throw new RangeError(
      `fertigationDose requires trees, litres and minutes above 0 and a conductivity from 0: got ${trees}, ${litresPerTree}, ${runMinutes}, ${waterEcDsPerM}`,
    );
  }
  const nutrients = Object.entries(gramsPerTree);
  for (const [name, grams] of nutrients) {
    if (!(grams >= 0)) throw new RangeError(`fertigationDose requires grams from 0: got ${grams} of ${name}`);
  }
  const each = (of: (grams: number) => number): Record<string, number> =>
    Object.fromEntries(nutrients.map(([name, grams]) => [name, of(grams)]));
  const injectedShare = times.injectMinutes < runMinutes ? times.injectMinutes / runMinutes : 1;
  const mgPerL = each((grams) => (1000 * grams) / litresPerTree);
  const mgPerLInjecting = each((grams) => (1000 * grams) / (litresPerTree * injectedShare));
  const saltMgPerL = Object.values(mgPerLInjecting).reduce((sum, mg) => sum + mg, 0);
  const leastEcDsPerM = waterEcDsPerM + saltMgPerL / saltMgPerLPerDsPerM;
  const shortestMinutes = shortestFertigatedRunMinutes(times);
  const injectFromMinutes = times.travelMinutes;
  const injectToMinutes = injectFromMinutes + times.injectMinutes;
  const warnings: FertigationWarning[] = [];
  if (leastEcDsPerM > troubleEcDsPerM) warnings.push({ code: "too-concentrated", leastEcDsPerM, troubleEcDsPerM });
  if (runMinutes < shortestMinutes) warnings.push({ code: "run-too-short", runMinutes, shortestMinutes });
  return {
    kgPerSector: each((grams) => (grams * trees) / 1000),
    mgPerL,
    mgPerLInjecting,
    leastEcDsPerM,
    injectFromMinutes,
    injectToMinutes,
    flushMinutes: runMinutes > injectToMinutes ? runMinutes - injectToMinutes : 0,
    warnings,
  };
}
