import {
  canopyCover,
  canopyDensityFao56,
  climateAdjustedKc,
  densityCoefficient,
  depthOnWettedMm,
  effectiveCover,
  kcbByHeight,
  kcbFromLeafArea,
  kcbFullCover,
  largestNetDepthMm,
  leafAreaFromKcb,
  localizedCoverFactor,
  sparseKcb,
  stomatalReduction,
  thinStandReduction,
  trickleTranspirationMm,
  withLeaching,
} from "rootledger/tree";
import { latitudeRad, noonSunHeightRad, solarDeclinationRad } from "rootledger/weather";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const noonSun = (given: Given): number =>
  noonSunHeightRad(latitudeRad(given.number("lat_deg")), given.number("day_of_year"));

const climateOf = (given: Given) => ({
  windAt2mMPerS: given.number("u2_m_s"),
  rhMinPct: given.number("rhmin_pct"),
});

/** FAO-56 chapter 9 and the rules for cover under drip. */
export const groundCover: Evaluators = {
  "fao56-ex40-sparse": (given) => {
    const height = given.number("height_m");
    const kc = climateAdjustedKc(given.number("kc_mid_tab"), climateOf(given), height);
    const kcb = climateAdjustedKc(given.number("kcb_mid_tab"), climateOf(given), height);
    const thin = thinStandReduction(given.number("fc"), given.number("fc_dense"));
    return { kc_mid: kc, kcb_mid: kcb, acm: thin, kcb_mid_adj: kcb - thin, kc_mid_adj: kc - thin };
  },
  "fao56-ex41-kcb": (given) => {
    const eta = noonSun(given);
    const heightM = given.number("height_m");
    const cover = given.number("fc");
    const shade = effectiveCover(cover, { kind: "hedge", heightToWidth: given.number("hwr") }, eta);
    const full = kcbFullCover(heightM, climateOf(given));
    return {
      declination_rad: solarDeclinationRad(given.number("day_of_year")),
      sin_eta: Math.sin(eta),
      eta_rad: eta,
      fc_eff: shade,
      kcb_h: kcbByHeight(heightM),
      kcb_full: full,
      kcb_mid: sparseKcb(canopyDensityFao56({ cover, effectiveCover: shade, heightM }), full, given.number("kc_min")),
    };
  },
  "fao56-ex43-olive": (given) => {
    const eta = noonSun(given);
    const heightM = given.number("height_m");
    const full = kcbFullCover(heightM, climateOf(given));
    const grove = (treeSpacingM: number, rowSpacingM: number) => {
      const cover = canopyCover(given.number("canopy_diameter_m"), { treeSpacingM, rowSpacingM });
      const shade = effectiveCover(cover, { kind: "round" }, eta);
      const density = canopyDensityFao56({ cover, effectiveCover: shade, heightM });
      return { cover, shade, kcb: sparseKcb(density, full, given.number("kc_min")) };
    };
    const [along = Number.NaN, across = Number.NaN] = given.numbers("spacing_m");
    const wide = grove(along, across);
    const close = grove(along / 2, across);
    const fr = stomatalReduction({
      slopeKPaPerC: given.number("slope_kPa_C"),
      gammaKPaPerC: given.number("gamma_kPa_C"),
      windAt2mMPerS: given.number("u2_m_s"),
      leafResistanceSPerM: given.number("leaf_resistance_s_m"),
    });
    return {
      sin_eta: Math.sin(eta),
      fc: wide.cover,
      fc_eff: wide.shade,
      kcb_full: full,
      kcb_mid: wide.kcb,
      fr,
      kcb_mid_adj: fr * wide.kcb,
      kcb_mid_5x10: close.kcb,
      kcb_mid_adj_5x10: fr * close.kcb,
    };
  },
  "fao56-tab12-fn21-citrus": (given) => {
    const heights = given.numbers("height_m");
    const orchard = (cover: number, heightM: number): number[] => {
      const density = canopyDensityFao56({ cover, effectiveCover: cover, heightM });
      return given.numbers("kc_full").map((full) => sparseKcb(density, full, given.number("kc_min")));
    };
    const [dense = [], thin = []] = given.numbers("fc").map((cover, i) => orchard(cover, heights[i] ?? Number.NaN));
    return { kc_70: dense, kc_50: thin };
  },
  "fao56-ex47-lai": (given) => ({
    lai_palm: leafAreaFromKcb(given.number("kc_palm"), given.number("kcb_full_palm"), given.number("kc_min")),
    lai_citrus: leafAreaFromKcb(given.number("kc_citrus"), given.number("kcb_full_citrus"), given.number("kc_min")),
    lai_combined: given.numbers("lai_printed").reduce((sum, lai) => sum + lai, 0),
  }),
  "fao56-eq97-lai": (given) => ({
    kcb: given.numbers("lai").map((lai) => kcbFromLeafArea(lai, given.number("kcb_full"), given.number("kc_min"))),
  }),
  "allen2009-kd": (given) => {
    const at = (name: string, i: number): number => given.numbers(name)[i] ?? Number.NaN;
    return {
      kd: given
        .numbers("ml")
        .map((multiplier, i) =>
          densityCoefficient({ multiplier, effectiveCover: at("fc_eff", i), heightM: at("height_m", i) }),
        ),
    };
  },
  "fao56-eq61-iw": (given) => {
    const fw = given.numbers("fw");
    return { iw_mm: given.numbers("depth_field_mm").map((mm, i) => depthOnWettedMm(mm, fw[i] ?? Number.NaN)) };
  },
  "kb-td": (given) => ({
    td_mm_day: given.numbers("shaded_pct").map((pct) => trickleTranspirationMm(given.number("ud_mm_day"), pct / 100)),
  }),
  "fao36-kr": (given) => {
    const covers = given.numbers("ground_cover_pct").map((pct) => pct / 100);
    return {
      kr_keller_karmeli: covers.map((cover) => localizedCoverFactor("keller-karmeli", cover)),
      kr_freeman_garzoli: covers.map((cover) => localizedCoverFactor("freeman-garzoli", cover)),
      kr_decroix: covers.map((cover) => localizedCoverFactor("decroix", cover)),
    };
  },
  "drip-net-depth": (given) => ({
    dx_mm: largestNetDepthMm({
      allowedDepletion: given.number("mad_pct") / 100,
      wettedFraction: given.number("pw_pct") / 100,
      availableMmPerM: given.number("wa_mm_m"),
      rootDepthM: given.number("z_m"),
    }),
  }),
  "fao29-aw": (given) => ({ aw_mm: withLeaching(given.number("et_mm"), given.number("lr")) }),
};
