import {
  coverFromKcb,
  type DualKcResult,
  depthOnWettedMm,
  dualKcDay,
  evaporationCoefficient,
  exposedWetted,
  kcMaximum,
  stageStartsDays,
  totalEvaporableWaterMm,
} from "rootledger/tree";
import { dayOfYear } from "rootledger/weather";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const climateOf = (given: Given) => ({
  windAt2mMPerS: given.number("u2_m_s"),
  rhMinPct: given.number("rhmin_pct"),
});

/** A row of days of the sandy loam of example 35. */
function sandyLoam(given: Given, irrigation: readonly number[], fw: readonly number[], rain: readonly number[]) {
  const store = {
    totalEvaporableMm: totalEvaporableWaterMm(given.number("theta_fc"), given.number("theta_wp"), given.number("ze_m")),
    readilyEvaporableMm: given.number("rew_mm"),
  };
  const et0 = given.numbers("eto_mm_day");
  const line = (name: string, i: number): number => {
    if (given.has(name)) return given.numbers(name)[i] ?? Number.NaN;
    const first = given.number(`${name}_first`);
    return first + ((given.number(`${name}_last`) - first) * i) / (et0.length - 1);
  };
  const days: (DualKcResult & { readonly few: number })[] = [];
  let depletionMm = given.number("de0_mm");
  et0.forEach((et0Mm, i) => {
    const kcb = line("kcb", i);
    const wetted = fw[i] ?? Number.NaN;
    const few = exposedWetted(1 - line("one_minus_fc", i), wetted);
    const day = dualKcDay(depletionMm, store, {
      et0Mm,
      kcb,
      kcMax: kcMaximum(climateOf(given), given.number("height_m"), kcb),
      exposedWetted: few,
      rainMm: rain[i] ?? 0,
      irrigationMm: irrigation[i] ?? 0,
      wettedFraction: wetted,
    });
    depletionMm = day.depletionMm;
    days.push({ ...day, few });
  });
  return { store, days };
}

/** FAO-56 chapter 7: Kcb + Ke by the day. */
export const dualKc: Evaluators = {
  "fao56-ex31-bare-soil": (given) => {
    const store = { totalEvaporableMm: given.number("tew_mm"), readilyEvaporableMm: given.number("rew_mm") };
    const days: DualKcResult[] = [];
    for (let day = 0; day < 10; day++) {
      const before = days.at(-1)?.depletionMm ?? 0;
      const today = { kcb: given.number("kcb"), kcMax: given.number("kc_max"), exposedWetted: given.number("few") };
      days.push(dualKcDay(before, store, { ...today, et0Mm: given.number("eto_mm_day") }));
    }
    return {
      kr: days.map(({ kr }) => kr),
      evap_mm_day: days.map(({ evaporationMm }) => evaporationMm),
      de_end_mm: days.map(({ depletionMm }) => depletionMm),
      etc_mm_day: days.map(({ cropEtMm }) => cropEtMm),
    };
  },
  "fao56-ex32-sprinkler": (given) => {
    const kcb = given.number("kcb");
    const heightM = given.number("height_m");
    const kcMax = kcMaximum(climateOf(given), heightM, kcb);
    const fc = coverFromKcb({ kcb, kcMin: given.number("kc_min"), kcMax, heightM });
    const few = exposedWetted(fc, given.number("fw"));
    const ke = evaporationCoefficient({ kr: given.number("kr"), kcMax, kcb, exposedWetted: few });
    return { kc_max: kcMax, fc, few, ke, few_kcmax: few * kcMax, kc: kcb + ke };
  },
  "fao56-ex35-setup": (given) => {
    const fw = given.number("fw");
    const irrigation = given.number("irrigation_field_mm");
    const { store, days } = sandyLoam(given, [irrigation, 0], [fw, fw], [0, 0]);
    return {
      tew_mm: store.totalEvaporableMm,
      kc_max: kcMaximum(climateOf(given), given.number("height_m"), given.numbers("kcb")[0] ?? Number.NaN),
      i_over_fw_mm: depthOnWettedMm(irrigation, fw),
      few: days.map(({ few }) => few),
      kr: days.map(({ kr }) => kr),
      ke: days.map(({ ke }) => ke),
      dpe_mm: days.map(({ percolationMm }) => percolationMm),
      de_end_mm: days.map(({ depletionMm }) => depletionMm),
      kc: days.map(({ kc }) => kc),
      etc_mm_day: days.map(({ cropEtMm }) => cropEtMm),
    };
  },
  "fao56-ex35-ten-days": (given) => {
    const { days } = sandyLoam(given, given.numbers("irrigation_mm"), given.numbers("fw"), given.numbers("rain_mm"));
    return {
      few: days.map(({ few }) => few),
      de_end_mm: days.map(({ depletionMm }) => depletionMm),
      etc_mm_day: days.map(({ cropEtMm }) => cropEtMm),
      kr: days.map(({ kr }) => kr),
    };
  },
  "fao56-annex8-dates": (given) => {
    const two = (name: string): string => String(given.number(name)).padStart(2, "0");
    const [a = 0, b = 0, c = 0, d = 0] = given.numbers("lengths_days");
    const planted = dayOfYear(`1974-${two("month")}-${two("day")}`);
    const [, dev = 0, mid = 0, late = 0, harvest = 0] = stageStartsDays([a, b, c, d]);
    return {
      j_plant: planted,
      j_dev: planted + dev,
      j_mid: planted + mid,
      j_late: planted + late,
      j_harvest: planted + harvest,
    };
  },
};
