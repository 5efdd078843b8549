import type { YearsPlan } from "rootledger/advise";
import { csvText } from "./csv-text.js";

/** The years of a plan, one line each. */
export function planCsv({ years }: YearsPlan): string {
  const nutrients = Object.keys(years[0]?.nutrientsG ?? {});
  const head = [
    ...["ageYears", "canopyDiameterM", "rootRadiusM", "leastGrossLPerDay", "peakGrossLPerDay", "hotDayGrossLPerDay"],
    ...["grossLPerTree", "openPerTree", "pluggedPerTree", "usefulShare", "wettedShare", "hoursOnHotDay"],
    ...nutrients.map((nutrient) => `${nutrient}_g`),
  ];
  const lines = years.map(
    ({ ageYears, canopyDiameterM, rootRadiusM, least, peak, grossLPerTree, plug, hoursOnHotDay, nutrientsG }) =>
      [
        ...[ageYears, canopyDiameterM, rootRadiusM, least.meanDay.grossLPerTree, peak.meanDay.grossLPerTree],
        ...[peak.hotDay.grossLPerTree, grossLPerTree, plug.openPerTree, plug.pluggedPerTree],
        ...[plug.usefulShare, plug.wettedShare, hoursOnHotDay],
        ...nutrients.map((nutrient) => nutrientsG[nutrient] ?? 0),
      ].map(String),
  );
  return csvText([head, ...lines]);
}
