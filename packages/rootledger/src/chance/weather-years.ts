import { dateOf, dayNumber } from "../numeric/day-number.js";
import type { Season, SiteWeather } from "../scenario/scenario.js";

/**
 * The same season out of the other years of a longer record, each moved to the season's own dates so that crop stages and
 * programme stay where they are. A year that the record holds only in part is left out, as is the season itself.
 *
 * @example weatherYears(record, { startDate: "2025-12-01", days: 84 }).length
 */
export function weatherYears(record: SiteWeather, season: Season): SiteWeather[] {
  const first = dayNumber(record.startDate);
  const [ownYear, ...monthAndDay] = season.startDate.split("-");
  const startYear = Number(record.startDate.slice(0, 4));
  const endYear = Number(dateOf(first + record.days - 1).slice(0, 4));
  const years: SiteWeather[] = [];
  for (let year = startYear; year <= endYear; year++) {
    const skip = dayNumber([String(year).padStart(4, "0"), ...monthAndDay].join("-")) - first;
    if (year === Number(ownYear) || !(skip >= 0 && skip + season.days <= record.days)) continue;
    const cut = (values: Float64Array): Float64Array => values.slice(skip, skip + season.days);
    years.push({
      ...record,
      name: `${record.name}, ${year}`,
      startDate: season.startDate,
      days: season.days,
      et0Mm: cut(record.et0Mm),
      rainMm: cut(record.rainMm),
      sunriseH: cut(record.sunriseH),
      sunsetH: cut(record.sunsetH),
    });
  }
  return years;
}
