import { dateOf, dayNumber } from "../numeric/day-number.js";
import { isWithin } from "./limits-by-day.js";
import type { Scenario } from "./scenario.js";

/** The season cut into parts that root-hours are booked by. */
export interface SeasonParts {
  readonly names: readonly string[];
  /** Number of the part of each day of the season. */
  readonly ofDay: Uint16Array;
}

const other = "other days";

/**
 * Parts of the season: the named ones given; else the tree's limit periods, and the days outside them as one more; else the stages
 * of its crop; else calendar months. Parts of one name, such as the flowering of two years, are one.
 *
 * @param partOfDay name of the part of each day, for instance its weeks by fruit load
 * @throws RangeError if there are names, and fewer than the season has days.
 * @example seasonParts(scenario).names // ["2025-12", "2026-01", "2026-02"]
 */
export function seasonParts({ season, block: { tree } }: Scenario, partOfDay?: readonly string[]): SeasonParts {
  const { periods } = tree.limits;
  const nameOfDay = partOfDay ?? (periods === undefined ? tree.days?.stages : undefined);
  if (nameOfDay !== undefined && nameOfDay.length < season.days) {
    throw new RangeError(`seasonParts requires a name for each of ${season.days} days: got ${nameOfDay.length}`);
  }
  const first = dayNumber(season.startDate);
  const nameOf = (day: number): string => {
    if (nameOfDay !== undefined) return nameOfDay[day];
    const date = dateOf(first + day);
    if (periods === undefined) return date.slice(0, 7);
    return periods.find((period) => isWithin(period, date.slice(5)))?.name ?? other;
  };
  const places = new Map<string, number>();
  const ofDay = Uint16Array.from({ length: season.days }, (_, day) => {
    const name = nameOf(day);
    const known = places.get(name);
    if (known !== undefined) return known;
    places.set(name, places.size);
    return places.size - 1;
  });
  return { names: [...places.keys()], ofDay };
}
