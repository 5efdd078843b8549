import type { YearsPlan } from "rootledger/advise";
import type { Column } from "./column.js";
import { numberColumn, type Table, tableOf } from "./table.js";

type Year = YearsPlan["years"][number];

const litresPerDay = "L/d";
const columns: readonly Column<Year>[] = [
  numberColumn("ageYears", "a", "age of the trees", (year) => year.ageYears),
  numberColumn("canopyDiameterM", "m", "diameter of the canopy", (year) => year.canopyDiameterM),
  numberColumn("rootRadiusM", "m", "reach of the roots", (year) => year.rootRadiusM),
  numberColumn(
    "leastGrossLPerDay",
    litresPerDay,
    "a mean day of the least span, per tree",
    (year) => year.least.meanDay.grossLPerTree,
  ),
  numberColumn(
    "peakGrossLPerDay",
    litresPerDay,
    "a mean day of the peak span, per tree",
    (year) => year.peak.meanDay.grossLPerTree,
  ),
  numberColumn(
    "hotDayGrossLPerDay",
    litresPerDay,
    "a hot day of the peak span, per tree",
    (year) => year.peak.hotDay.grossLPerTree,
  ),
  numberColumn("grossLPerTree", "L/tree", "water to be given in the year", (year) => year.grossLPerTree),
  numberColumn("openPerTree", "count", "open emitters, per tree", (year) => year.plug.openPerTree),
  numberColumn("pluggedPerTree", "count", "plugged emitters, per tree", (year) => year.plug.pluggedPerTree),
  numberColumn("usefulShare", "fraction", "share of the water that falls on roots", (year) => year.plug.usefulShare),
  numberColumn("wettedShare", "fraction", "share of the root disc that is wetted", (year) => year.plug.wettedShare),
  numberColumn("hoursOnHotDay", "h", "hours of watering on a hot day", (year) => year.hoursOnHotDay),
];

/** The years of a plan, one line each; a column for each nutrient. */
export function planTable({ years }: YearsPlan): Table {
  const nutrients = Object.keys(years[0]?.nutrientsG ?? {}).map((name) =>
    numberColumn<Year>(`${name}_g`, "g", `${name} in the year, per tree`, (year) => year.nutrientsG[name] ?? 0),
  );
  return tableOf("plan", "Year by year: canopy, water, emitters, nutrients", [...columns, ...nutrients], years);
}
