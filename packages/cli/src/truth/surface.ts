import { kcUnderPlastic, plasticMulchTable, residueEvaporationCut } from "rootledger/tree";
import {
  curveNumberByFormula,
  curveNumberFor,
  curveNumberRunoffMm,
  gravelEvaporationCut,
  initialAbstractionMm,
  looseMulchStorageMm,
  retentionMm,
  scsEffectiveRainMm,
  storageFactor,
  thumbEffectiveRainMm,
  twoStageDay,
  twoStageSoils,
  wetTwoStage,
} from "rootledger/water";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const mmPerInch = 25.4;

const anchors = (given: Given, name: string) => {
  const [ini = Number.NaN, mid = Number.NaN, end = Number.NaN] = given.numbers(name);
  return [ini, mid, end] as const;
};

/** Mulch, run-off, effective rain and the drying of bare soil. */
export const surface: Evaluators = {
  "fao56-ex45-plastic": (given) => ({
    kc: kcUnderPlastic(anchors(given, "kc_tab"), 1 - given.number("kc_factor")),
    kcb: kcUnderPlastic(anchors(given, "kcb_tab"), 1 - given.number("kcb_factor")),
  }),
  "fao56-tab25-plastic": (given) => ({
    kc_reduction_pct: given
      .texts("crop")
      .map((crop) => plasticMulchTable[crop]?.kcReduction.map((share) => Math.round(100 * share))),
  }),
  "diaz-2005-tephra": (given) => ({
    cut_pct: given.numbers("thickness_cm").map((cm) => 100 * gravelEvaporationCut(cm)),
  }),
  "fao56-residue-cut": (given) => ({
    cut_pct: given.numbers("cover_pct").map((pct) => 100 * residueEvaporationCut(pct / 100)),
  }),
  "loose-mulch-store": (given) => ({ store_mm: looseMulchStorageMm(given.number("thickness_cm")) }),
  runoff: (given) => ({
    q_in: given
      .numbers("curve_number")
      .map((cn) => curveNumberRunoffMm(given.number("p_mm"), cn, given.number("ia_over_s")) / mmPerInch),
  }),
  "tr55-tab4-1-ia": (given) => ({
    ia_in: given.numbers("curve_number").map((cn) => initialAbstractionMm(cn) / mmPerInch),
  }),
  "cn-s-61": (given) => ({ s_in: retentionMm(given.number("curve_number")) / mmPerInch }),
  "neh-cn-arc": (given) => ({
    cn_i: given.numbers("cn_ii").map((cn) => curveNumberFor("dry", cn)),
    cn_iii: given.numbers("cn_ii").map((cn) => curveNumberFor("wet", cn)),
  }),
  "hawkins-cn-arc-formula": (given) => ({
    cn_i: given.numbers("cn_ii").map((cn) => curveNumberByFormula("dry", cn)),
    cn_iii: given.numbers("cn_ii").map((cn) => curveNumberByFormula("wet", cn)),
  }),
  "effective-rainfall": (given) => ({
    effective_mm: given
      .numbers("rain_mm_month")
      .map((rainMm) => scsEffectiveRainMm({ rainMm, cropEtMm: given.number("etc_mm_month") })),
  }),
  "fao24-ex-effrain": (given) => {
    const month = { rainMm: given.number("rain_mm_month"), cropEtMm: given.number("etc_mm_month") };
    return {
      storage_factor: storageFactor(given.number("net_storage_mm")),
      effective_table_mm: scsEffectiveRainMm(month),
      effective_mm: scsEffectiveRainMm({ ...month, netStorageMm: given.number("net_storage_mm") }),
    };
  },
  "tm3-effective-rain": (given) => ({ effective_mm: given.numbers("rain_mm_month").map(thumbEffectiveRainMm) }),
  "bare-soil-evaporation": (given) => {
    const soil = twoStageSoils[given.text("soil") as keyof typeof twoStageSoils];
    const days: number[] = [];
    let state = wetTwoStage;
    for (let day = 0; day < given.number("days"); day++) {
      const today = twoStageDay(soil, state, given.number("potential_mm_day"));
      state = today.state;
      days.push(today.evaporationMm);
    }
    return {
      u_mm: soil.stageOneMm,
      alpha_mm_root_day: soil.alphaMmPerRootDay,
      evap_mm_day: days,
      sum_mm: days.reduce((sum, mm) => sum + mm, 0),
    };
  },
};
