import type { Result } from "rootledger";
import { numberColumn, type Table, tableOf, textColumn } from "./table.js";

const millisecondsPerDay = 86_400_000;

/** What the quantities of a day are. */
const meanings: Readonly<Record<string, string>> = {
  et0: "reference evapotranspiration",
  rain: "rain that fell",
  applied: "water out of the emitters, per tree",
  wanted: "transpiration that the weather asks for, per tree",
  transpired: "transpiration that the roots delivered, per tree",
  evaporated: "evaporation from the ground, per tree",
  belowRoots: "water that left the rooted depth downward, less what rose, per tree",
  bottom: "water that left the bottom of the profile, less what rose, per tree",
  runoff: "water that ran off the surface, per tree",
  heldByCanopy: "rain that leaves held and gave back to the air, per tree",
  heldByLayer: "rain that litter or mulch held and gave back to the air, per tree",
  thirsty: "root-hours in soil too dry to draw from freely",
  airless: "root-hours without enough air",
  fine: "root-hours that were neither",
  thirstySeverity: "thirsty root-hours times what the factor lacks of 1",
  airlessSeverity: "airless root-hours times what the factor lacks of 1",
  rootZoneWater: "water in the rooted depth, weighted by the roots",
  storage: "water in the whole profile, per tree",
  residual: "what the books lack: start and inflow less outflow and end, per tree",
};
const kinds = { state: "at the end of the day", flux: "of the day", sum: "since the start" } as const;

/** The day table: one line per day and tree, units in the column names. */
export function dayTable({ days, trees, startDate }: Result): Table {
  const first = Date.parse(`${startDate}T00:00:00Z`);
  const rows = Array.from({ length: days.rows * trees.length }, (_, place) => place);
  return tableOf(
    "days",
    "Every day of the season, for each tree",
    [
      {
        ...{ name: "date", type: "date", description: "the day, local standard time" },
        of: (place: number) => new Date(first + dayOf(place) * millisecondsPerDay).toISOString().slice(0, 10),
      },
      textColumn<number>("tree", "mean, under-fed or over-fed", (place) => trees[place % trees.length]),
      ...days.columns.map(({ name, unit, kind, values }) =>
        numberColumn<number>(
          `${name}_${unit}`,
          unit,
          `${meanings[name] ?? name}; ${kinds[kind]}`,
          (place) => values[place],
        ),
      ),
    ],
    rows,
  );

  function dayOf(place: number): number {
    return Math.floor(place / trees.length);
  }
}
