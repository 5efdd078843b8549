import type { WaterNeed } from "rootledger/tree";
import type { Column } from "./column.js";
import { numberColumn, type Table, tableOf, textColumn } from "./table.js";

type Span = WaterNeed["periods"][number];

const amounts = {
  netLPerTree: ["L/tree", "water that a tree wants"],
  grossLPerTree: ["L/tree", "water to be given for it"],
  netMm: ["mm", "the same over the ground that counts"],
  grossMm: ["mm", "water to be given over the ground that counts"],
  netM3PerHa: ["m3/ha", "water wanted per hectare; empty without spacing"],
  grossM3PerHa: ["m3/ha", "water to be given per hectare; empty without spacing"],
} as const;
const ofDay = Object.keys(amounts) as (keyof typeof amounts)[];
const ofSpan = ["netLPerTree", "grossLPerTree", "netM3PerHa", "grossM3PerHa"] as const;

const columns: readonly Column<Span>[] = [
  textColumn("name", "name of the span", (span) => span.name),
  { name: "days", type: "number", unit: "d", description: "length of the span", of: (span) => span.days },
  numberColumn("referenceMmPerDay", "mm/d", "ET0 or pan evaporation of a mean day", (span) => span.referenceMmPerDay),
  numberColumn("coefficient", "fraction", "crop coefficient or pan factor", (span) => span.coefficient),
  ...(["meanDay", "hotDay"] as const).flatMap((day) =>
    ofDay.map((name): Column<Span> => {
      const [unit, meaning] = amounts[name];
      const when = day === "meanDay" ? "a mean day" : "a hot day";
      return numberColumn(`${day}_${name}`, `${unit}/d`, `${meaning}, on ${when}`, (span) => span[day][name]);
    }),
  ),
  ...ofSpan.map((name): Column<Span> => {
    const [unit, meaning] = amounts[name];
    return numberColumn(`span_${name}`, unit, `${meaning}, over the span`, (span) => span[name]);
  }),
];

/** The spans of a need, one line each. */
export const needTable = ({ periods }: WaterNeed): Table =>
  tableOf("need", "What trees want, span by span", columns, periods);
