import {
  concentrationFactor,
  eceAtFraction,
  faoSaltTable,
  leachingRequirement,
  saltFactor,
  stressCoefficient,
  stressFromHarvest,
  withLeaching,
} from "rootledger/tree";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const toleranceOf = (given: Given) => ({
  thresholdDsPerM: given.number("threshold_dS_m"),
  slopePerDsPerM: given.number("slope_pct_per_dS_m") / 100,
});

/** A single figure stands alone, a range is a list, and a row without figures prints none. */
const printed = (values: readonly number[] | undefined, factor: number) => {
  const found = values?.map((value) => value * factor);
  return found === undefined ? null : found.length === 1 ? found[0] : found;
};

/** Tolerance to salt, leaching and the salt of the root zone. */
export const salinity: Evaluators = {
  "salt-tolerance": (given) => {
    const row = faoSaltTable[given.text("crop")];
    return {
      threshold_dS_m: printed(row?.thresholdDsPerM, 1),
      slope_pct_per_dS_m: printed(row?.slopePerDsPerM, 100),
      rating: row?.rating,
    };
  },
  "salt-levels": (given) => {
    const levels = (name: string) =>
      given.has(name) ? given.numbers(name).map((pct) => eceAtFraction(toleranceOf(given), pct / 100)) : [];
    return { ece_dS_m: levels("fraction_pct"), ece_whole_dS_m: levels("whole_pct") };
  },
  "fao56-ex39-salinity": (given) => {
    const salt = saltFactor(toleranceOf(given), given.number("ece_dS_m"), given.number("ky"));
    const total = given.number("taw_mm");
    const water = given.numbers("dr_mm").map((mm) => stressCoefficient(mm, total, given.number("raw_mm") / total));
    return { ks_salinity: salt, ks_water: water, ks_both: water.map((factor) => salt * factor) };
  },
  "fao56-ex44-ks-yield": (given) => ({
    ks: stressFromHarvest({
      harvestRatio: given.number("yield_kg_ha") / given.number("yield_max_kg_ha"),
      ky: given.number("ky"),
    }),
  }),
  "fao29-tab03-x": (given) => ({ x: given.numbers("lf").map((fraction) => concentrationFactor(fraction)) }),
  "fao29-ex-leaching": (given) => {
    const lr = (name: string) => leachingRequirement(given.number("ec_w_dS_m"), given.number(name));
    const most = lr("ece_90pct_dS_m");
    return {
      lr_90pct: most,
      lr_100pct: lr("ece_100pct_dS_m"),
      depth_90pct_mm: withLeaching(given.number("et_mm_season"), most),
    };
  },
  "fao29-lr-formula": (given) => {
    const ece = given.numbers("ece_dS_m");
    return { lr: given.numbers("ec_w_dS_m").map((ecw, i) => leachingRequirement(ecw, ece[i] ?? Number.NaN)) };
  },
};
