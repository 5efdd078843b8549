import {
  chanceStream,
  meanDrySpellDays,
  meanWetSpellDays,
  residualProcess,
  residualsInto,
  wetFraction,
} from "rootledger/weather";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const matrix = (given: Given, name: string): number[][] => given.rows(name).map((row) => row.map(Number));

function processOf(given: Given) {
  const process = residualProcess(matrix(given, "m0"), matrix(given, "m1"));
  if (process === undefined) throw new Error("the correlations belong to no process");
  return process;
}

const matrices: Evaluators[string] = (given) => {
  const { a, b } = processOf(given);
  return { a: a.flat(), b: b.flat() };
};

/** The weather generator. */
export const generator: Evaluators = {
  "richardson-residual-matrices": matrices,
  "richardson-residual-matrices-printed": matrices,
  "richardson-residual-statistics": (given) => statistics(given),
  "richardson-rain-chain": (given) => {
    const chain = { wetAfterDry: given.number("P_wd"), wetAfterWet: given.number("P_ww") };
    const wetDayMm = given.number("gamma_alpha") * given.number("gamma_beta_mm");
    return {
      wet_fraction: wetFraction(chain),
      mean_wet_run_d: meanWetSpellDays(chain),
      mean_dry_run_d: meanDrySpellDays(chain),
      mean_daily_rain_mm: wetFraction(chain) * wetDayMm,
    };
  },
};

/** Draws the process and measures the spread of its first variable and its correlations with the second and with itself a day later. */
function statistics(given: Given): Record<string, number> {
  const process = processOf(given);
  const chance = chanceStream("residual-statistics", 0, "residual");
  const draws = given.number("n");
  const size = process.a.length;
  const before = new Float64Array(size);
  const now = new Float64Array(size);
  const normals = new Float64Array(size);
  let [xx, xy, yy, lag] = [0, 0, 0, 0];
  for (let d = 0; d < draws; d++) {
    for (let i = 0; i < size; i++) normals[i] = chance.normal();
    residualsInto(now, process, d === 0 ? process.start : process.b, before, normals);
    const [x = 0, y = 0] = now;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    lag += x * (before[0] ?? 0);
    before.set(now);
  }
  return { sd: Math.sqrt(xx / draws), rho_TmaxTmin: xy / Math.sqrt(xx * yy), lag1_Tmax: lag / xx };
}
