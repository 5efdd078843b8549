import {
  depletionFractionFor,
  faoKcbTable,
  faoKcTable,
  faoRootTable,
  faoStageTable,
  readilyAvailableWaterMm,
  rootDepthWithKcbM,
  stageStartsDays,
  stressCoefficient,
  totalAvailableWaterMm,
} from "rootledger/tree";
import type { Evaluators } from "./evaluators.js";

/** Rows of FAO-56 that the library carries as data, and the sums of chapter 8. */
export const cropTables: Evaluators = {
  "kc-tables": (given) => {
    const row = faoKcTable[given.text("crop")];
    return { kc_ini: row?.kcInitial, kc_mid: row?.kcMiddle, kc_end: row?.kcEnd, height_m: row?.heightM };
  },
  "kcb-tables": (given) => {
    const row = faoKcbTable[given.text("crop")];
    return { kcb_ini: row?.kcbInitial, kcb_mid: row?.kcbMiddle, kcb_end: row?.kcbEnd };
  },
  "stage-lengths": (given) => {
    const row = faoStageTable[given.text("crop_region")];
    if (row === undefined || String(row.lengthsDays) !== String(given.numbers("lengths_days"))) return {};
    return { total_days: row.totalDays === stageStartsDays(row.lengthsDays)[4] ? row.totalDays : Number.NaN };
  },
  "root-depth-p": (given) => {
    const row = faoRootTable[given.text("crop")];
    return { zr_min_m: row?.depthMinM, zr_max_m: row?.depthMaxM, p: row?.depletionFraction };
  },
  "fao56-annex8-rootdepth": (given) => {
    const crop = {
      zrMinM: given.number("zr_min_m"),
      zrMaxM: given.number("zr_max_m"),
      kcbInitial: given.number("kcb_ini"),
      kcbMiddle: given.number("kcb_mid"),
    };
    return { zr_m: given.numbers("kcb").map((kcb) => rootDepthWithKcbM(crop, kcb)) };
  },
  "taw-raw": (given) => {
    const wilting = given.numbers("theta_wp");
    const taw = given
      .numbers("theta_fc")
      .map((capacity, i) => totalAvailableWaterMm(capacity, wilting[i] ?? Number.NaN, given.number("zr_m")));
    return { taw_mm: taw, raw_mm: taw.map((mm) => readilyAvailableWaterMm(mm, given.number("p"))) };
  },
  "fao56-tab22-p-adjust": (given) => {
    const etc = given.numbers("etc_mm_day");
    return { p: given.numbers("p_tab").map((p, i) => depletionFractionFor(p, etc[i] ?? Number.NaN)) };
  },
  "fao56-ex37-ks": (given) => {
    const p = given.number("p");
    const taw = totalAvailableWaterMm(given.number("theta_fc"), given.number("theta_wp"), given.number("zr_m"));
    const days: { ks: number; etc: number; dr: number }[] = [];
    let dr = given.number("dr0_mm");
    for (let day = 0; day < 10; day++) {
      const ks = stressCoefficient(dr, taw, p);
      const etc = ks * given.number("kc") * given.number("eto_mm_day");
      dr += etc;
      days.push({ ks, etc, dr });
    }
    return {
      taw_mm: taw,
      raw_mm: readilyAvailableWaterMm(taw, p),
      ks: days.map(({ ks }) => ks),
      etc_adj_mm_day: days.map(({ etc }) => etc),
      dr_end_mm: days.map((day) => day.dr),
    };
  },
  "fao56-eq80-dual": (given) => {
    const ks = given.number("ks");
    const eto = given.number("eto_mm_day");
    return {
      etc_adj_dual_mm_day: (ks * given.number("kcb") + given.number("ke")) * eto,
      etc_adj_single_mm_day: ks * given.number("kc") * eto,
    };
  },
};
