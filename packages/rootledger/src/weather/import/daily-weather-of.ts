import { dateOf, dayNumber } from "../../numeric/day-number.js";
import { type DailyWeather, emptyDailyWeather, type WeatherColumn, weatherColumns } from "../daily-weather.js";
import { fillGaps, type GapRule } from "../fill-gaps.js";
import { dewPointC } from "../vapour-pressure.js";
import { placeAccumulated } from "./accumulated-rain.js";
import { fillDarkHours } from "./dark-hours.js";
import { type DayCoverage, dayFigures } from "./day-figures.js";
import { type QuantityName, quantities } from "./quantity.js";
import { mark } from "./special-cell.js";
import type { StationColumn, StationTable } from "./station-table.js";

/** How records become days. */
export interface DailyRules {
  /** Days with too few records: left out, or taken as what was recorded. */
  readonly incompleteDays: "missing" | "as-recorded";
  readonly accumulated: "reading-day" | "spread";
  readonly gaps: GapRule;
}

/** Days that were summed from records. */
export interface DailyOfTable {
  readonly weather: DailyWeather;
  /** What was summed, left out and filled, with counts. */
  readonly notes: readonly string[];
}

/** Longest record that is turned into days: two centuries. */
const mostDays = 73_050;

/** For the lowest and highest of a day, the readings that stand in where the file has no extremes of its own. */
const sources: Partial<Readonly<Record<WeatherColumn, readonly QuantityName[]>>> = {
  tMinC: ["tMinC", "tMeanC"],
  tMaxC: ["tMaxC", "tMeanC"],
  rhMinPct: ["rhMinPct", "rhMeanPct"],
  rhMaxPct: ["rhMaxPct", "rhMeanPct"],
};

/**
 * The days of a record, from midnight to midnight of local standard time or from the record's own start of the day, dated by the day on which they begin. Of shorter records: sums
 * of rain, radiation, sunshine, pan and ET0 need every record of the day, means and extremes five sixths of them (own rule); radiation
 * that is blank at night counts 0 there. Undefined where the table holds no weather or its step does not part the day.
 *
 * @example dailyWeatherOf(table, { incompleteDays: "missing", accumulated: "reading-day", gaps: {} })
 */
export function dailyWeatherOf(table: StationTable, rules: DailyRules): DailyOfTable | undefined {
  const { minutes, stepMinutes } = table;
  const used = weatherColumns.filter(
    (column) => sourceOf(table, column) !== undefined || (column === "dewPointC" && vapour(table) !== undefined),
  );
  const divides = stepMinutes === 1440 || (stepMinutes < 1440 && Number.isInteger(1440 / stepMinutes));
  if (used.length === 0 || minutes.length === 0 || !divides) return undefined;
  const back = table.dayStartMinutes + (table.stamp === "end" ? stepMinutes : 0);
  const first = Math.floor((minutes[0] - back) / 1440);
  const days = Math.floor((minutes[minutes.length - 1] - back) / 1440) - first + 1;
  if (days > mostDays) return undefined;
  const day = new Int32Array(minutes.length);
  for (let i = 0; i < day.length; i++) day[i] = Math.floor((minutes[i] - back) / 1440) - first;
  const whole = emptyDailyWeather(dateOf(first), days);
  const notes: string[] = [];
  const perDay = Math.round(1440 / stepMinutes);
  const lenient = rules.incompleteDays === "as-recorded";
  const coverage: DayCoverage = {
    ofDay: perDay,
    leastForMean: lenient ? 1 : Math.ceil((perDay * 5) / 6),
    leastForSum: lenient ? 1 : perDay,
  };
  for (const column of used) {
    const source = sourceOf(table, column) ?? vapour(table);
    if (source === undefined) continue;
    let records = source.values;
    if (column === "dewPointC" && source.quantity === "vapourPressureKPa") {
      records = records.map((kPa) => (kPa > 0 ? dewPointC(kPa) : Number.NaN));
      notes.push("dewPointC: from the vapour pressure (FAO-56 eq. 3-11)");
    }
    if (column === "solarMJPerM2" && stepMinutes < 1440) {
      const night = fillDarkHours(
        records,
        day,
        (i) => minutes[i] - back - (first + day[i]) * 1440,
        monthsOf(first, days),
        stepMinutes,
      );
      records = night.records;
      if (night.filled > 0)
        notes.push(`solarMJPerM2: ${night.filled} blank records at times of day without sun count 0`);
    }
    if (column === "rainMm" && stepMinutes === 1440) records = accumulated(source, rules.accumulated, notes);
    const figures = dayFigures(records, day, days, quantities[column].ofDay, coverage);
    whole[column].set(figures.values);
    if (figures.incomplete > 0) {
      const sum =
        quantities[column].ofDay === "sum" ? ` (${Number(figures.incompleteSum.toFixed(2))} recorded on them)` : "";
      notes.push(`${column}: ${figures.incomplete} of ${days} days have too few records${sum}, left missing`);
    }
  }
  const weather = trimmed(whole);
  const cut = days - weather.days;
  if (cut > 0) notes.push(`${cut} ${cut === 1 ? "day" : "days"} at the ends without any figure left out`);
  return { weather, notes: [...notes, ...fillGaps(weather, rules.gaps)] };
}

function sourceOf({ columns }: StationTable, column: WeatherColumn): StationColumn | undefined {
  for (const quantity of sources[column] ?? [column as QuantityName]) {
    const found = columns.find((one) => one.quantity === quantity);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Vapour pressure serves where the file has neither dew point nor humidity. */
const vapour = ({ columns }: StationTable): StationColumn | undefined =>
  columns.some(({ quantity }) => quantity === "dewPointC" || quantity.startsWith("rh"))
    ? undefined
    : columns.find(({ quantity }) => quantity === "vapourPressureKPa");

/** Number of the month of each day, counted through the years. */
function monthsOf(first: number, days: number): Int32Array {
  const months = new Int32Array(days);
  for (let d = 0; d < days; d++) {
    const date = dateOf(first + d);
    months[d] = Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7));
  }
  return months;
}

function accumulated({ values, marks }: StationColumn, rule: DailyRules["accumulated"], notes: string[]): Float64Array {
  if (!marks.includes(mark.accumulating)) return values;
  const copy = values.slice();
  const placed = placeAccumulated(copy, marks.slice(), rule);
  const how =
    rule === "spread"
      ? "shared alike with the day of the reading"
      : "the amount stands on the day of the reading, the days before count 0";
  notes.push(`rainMm: ${placed} days were read later; ${how}`);
  return copy;
}

/** Without days at either end on which nothing was measured. */
function trimmed(weather: DailyWeather): DailyWeather {
  const empty = (d: number): boolean => weatherColumns.every((column) => Number.isNaN(weather[column][d]));
  let from = 0;
  let to = weather.days;
  while (from < to && empty(from)) from++;
  while (to > from && empty(to - 1)) to--;
  if (from === 0 && to === weather.days) return weather;
  const cut = emptyDailyWeather(dateOf(dayNumber(weather.startDate) + from), to - from);
  for (const column of weatherColumns) cut[column].set(weather[column].subarray(from, to));
  return cut;
}
