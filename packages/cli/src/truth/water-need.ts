import { type NeedQuestion, waterNeed } from "rootledger/tree";
import type { Evaluators } from "./evaluators.js";

/** What all published cards leave open: no losses, no leaching, no hot day. */
const plain = { hotDayRatio: 1, efficiencyFraction: 1, leachingFraction: 0 };

const day = (referenceMmPerDay: number, coefficient: number) => ({
  name: "day",
  days: 1,
  referenceMmPerDay,
  coefficient,
});

const netL = (question: Omit<NeedQuestion, keyof typeof plain>): number[] =>
  waterNeed({ ...plain, ...question }).periods.map(({ meanDay }) => meanDay.netLPerTree);

/** Irrigation cards of extension services. */
export const waterNeeds: Evaluators = {
  "inia-card-quillota": (given) => {
    const kc = given.numbers("kc");
    const periods = given.numbers("eto_mm_day").map((mm, i) => day(mm, kc[i] ?? Number.NaN));
    return {
      highNetL: given.numbers("tree_spacing_m").map((treeSpacingM) =>
        netL({
          tree: { spacing: { treeSpacingM, rowSpacingM: given.number("row_spacing_m") } },
          cover: { rule: "whole-ground" },
          reference: { kind: "et0" },
          periods,
        }),
      ),
    };
  },
  "water-need": (given) => ({
    net_L: netL({
      tree: { canopyDiameterM: 2 * Math.sqrt(given.number("canopy_m2") / Math.PI) },
      cover: { rule: "canopy-ground" },
      reference: { kind: "pan-factor" },
      periods: given.numbers("pan_mm_day").map((mm) => day(mm, given.number("crop_factor"))),
    }),
  }),
  "wa-citrus-runs": (given) => {
    const need = given.number("need_L");
    const held = given.number("held_mm_per_m") * given.number("root_depth_m") * given.number("canopy_m2");
    return {
      held_L: held,
      runs_per_day_drippers: Math.ceil(need / given.number("held_by_drippers_L")),
      days_between_sprinkler: Math.floor(held / need),
    };
  },
  "peru-pan": (given) => {
    const need = waterNeed({
      ...plain,
      tree: { spacing: { treeSpacingM: 1, rowSpacingM: given.number("ground_m2") } },
      cover: { rule: "stated-cover", coverFraction: given.number("cover") },
      reference: { kind: "pan", panCoefficient: given.number("pan_coefficient") },
      periods: [day(given.number("pan_mm_day"), given.number("kc"))],
    });
    return { depth_mm: need.periods[0]?.meanDay.depthMm, net_L: need.netLPerTree };
  },
};
