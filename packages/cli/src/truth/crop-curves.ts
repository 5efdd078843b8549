import {
  climateAdjustedKc,
  climateAdjustedKcEnd,
  depthOnWettedMm,
  figureStore,
  kcInitial,
  kcInitialForDepth,
  kcInitialPartlyWetted,
  kcOnDay,
  meanKc,
  rainEvents,
  stageOneDays,
  wetBareSoilKc,
} from "rootledger/tree";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const curveOf = (given: Given) => {
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN, d = Number.NaN] = given.numbers("lengths_days");
  const [ini = Number.NaN, mid = Number.NaN, end = Number.NaN] = given.numbers("kc");
  return { lengthsDays: [a, b, c, d] as const, kcInitial: ini, kcMiddle: mid, kcEnd: end };
};

/** Kc with table, height and climate given as lists or single numbers. */
function adjusted(given: Given, table: string): number[] {
  const at = (name: string, i: number): number => {
    const list = given.numbers(name);
    return list[list.length === 1 ? 0 : i] ?? Number.NaN;
  };
  const count = Math.max(...[table, "height_m", "u2_m_s", "rhmin_pct"].map((name) => given.numbers(name).length));
  return Array.from({ length: count }, (_, i) =>
    climateAdjustedKc(
      at(table, i),
      { windAt2mMPerS: at("u2_m_s", i), rhMinPct: at("rhmin_pct", i) },
      at("height_m", i),
    ),
  );
}

/** Kc of the initial stage from figure 29. */
const lightKc = (given: Given): number => {
  const et0 = given.number("eto_mm_day");
  return kcInitial(figureStore("light", et0), given.number("interval_days"), et0);
};

/** FAO-56 chapter 6: Kc of the initial stage, climate adjustment and the curve. */
export const cropCurves: Evaluators = {
  "fao56-ex23-wetting-interval": (given) => {
    const events = given.numbers("event_mm");
    return { rainy_days: given.numbers("month_rain_mm").map((mm, i) => rainEvents(mm, events[i] ?? Number.NaN)) };
  },
  "fao56-ex24-kcini-light": (given) => ({
    kc_ini: lightKc(given),
    etc_mm_day: given.number("kc_read") * given.number("eto_mm_day"),
  }),
  "fao56-ex26-kcini-partial": (given) => {
    const fw = given.number("fw");
    const depth = depthOnWettedMm(given.number("depth_field_mm"), fw);
    const wet = kcInitialForDepth(depth, given.number("kc_fig29"), given.number("kc_fig30b"));
    const kc = kcInitialPartlyWetted(wet, fw);
    return { iw_mm: depth, kc_ini_wet: wet, kc_ini: kc, etc_mm_day: kc * given.number("eto_mm_day") };
  },
  "fao56-ex7-1-kcini-eq": (given) => {
    const et0 = given.number("eto_mm_day");
    const light = figureStore("light", et0);
    const heavy = figureStore("heavy-coarse", et0);
    const kcHeavy = kcInitial(heavy, given.number("interval_days"), et0);
    const kc = kcInitialForDepth(given.number("depth_mm"), lightKc(given), kcHeavy);
    return {
      eso_mm_day: wetBareSoilKc * et0,
      rew29_mm: light.readilyEvaporableMm,
      t1_29_days: stageOneDays(light.readilyEvaporableMm, et0),
      kc_fig29: lightKc(given),
      tew30a_mm: heavy.totalEvaporableMm,
      rew30a_mm: heavy.readilyEvaporableMm,
      t1_30a_days: stageOneDays(heavy.readilyEvaporableMm, et0),
      kc_fig30a: kcHeavy,
      kc_ini: kc,
      etc_mm_day: kc * et0,
    };
  },
  "fao56-box15-kcini-14day": (given) => ({ kc_ini: lightKc(given) }),
  "kc-climate": (given) => ({ kc_mid: adjusted(given, "kc_mid_tab") }),
  "fao56-ex29-kcb-bean": (given) => {
    const climate = { windAt2mMPerS: given.number("u2_m_s"), rhMinPct: given.number("rhmin_pct") };
    const height = given.number("height_m");
    const [ini = Number.NaN, mid = Number.NaN, end = Number.NaN] = given.numbers("kcb_tab");
    return { kcb: [ini, climateAdjustedKc(mid, climate, height), climateAdjustedKcEnd(end, climate, height)] };
  },
  "fao56-ex28-kc-day": (given) => ({ kc_day: given.numbers("day").map((day) => kcOnDay(curveOf(given), day)) }),
  "fao56-fig36-decades": (given) => {
    const kc = given.numbers("eto_mm_day").map((_, i) => meanKc(curveOf(given), 10 * i, 10 * (i + 1)));
    return { kc_decade: kc, etc_mm_day: given.numbers("eto_mm_day").map((mm, i) => mm * (kc[i] ?? Number.NaN)) };
  },
};
