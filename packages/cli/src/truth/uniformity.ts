import {
  christiansenUniformity,
  designEmissionUniformity,
  emittersForShare,
  lowQuarterUniformity,
  wettedShare,
} from "rootledger/lines";
import type { Evaluators } from "./evaluators.js";

/** Uniformity of emitters and cans, and the share of the ground that is wetted. */
export const uniformity: Evaluators = {
  uniformity: (given) => ({
    cu_pct: 100 * christiansenUniformity(given.numbers("depth_mm")),
    du_lq_pct: 100 * lowQuarterUniformity(given.numbers("depth_mm")),
  }),
  "emission-uniformity": (given) => {
    const [emitters, flows] = [given.numbers("emitters_per_plant"), given.numbers("qmin_over_qavg")];
    const eu = given.numbers("cv").map((variation, i) => {
      const [emittersPerTree = Number.NaN, minOverMeanFlow = Number.NaN] = [emitters[i], flows[i]];
      return 100 * designEmissionUniformity({ variation, emittersPerTree, minOverMeanFlow });
    });
    return { eu_pct: eu };
  },
  "wetted-area": (given) => {
    const lines = given.text("lines") === "two-lines" ? "two-lines" : "single-line";
    const [treeSpacingM = Number.NaN, rowSpacingM = Number.NaN] = given.numbers("tree_spacing_m");
    const layout = {
      emitterSpacingM: given.number("emitter_spacing_m"),
      wettedWidthM: given.number("wetted_width_m"),
      treeSpacingM,
      rowSpacingM,
    };
    if (given.has("emitters_per_tree")) {
      return { pw_pct: 100 * wettedShare(lines, { ...layout, emittersPerTree: given.number("emitters_per_tree") }) };
    }
    const exact = emittersForShare(given.number("target_pw_pct") / 100, lines, layout);
    return { emitters_exact: exact, emitters: Math.ceil(exact) };
  },
};
