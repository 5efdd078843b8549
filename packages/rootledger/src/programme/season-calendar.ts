import { dateOf, dayNumber } from "../numeric/day-number.js";
import { openHours } from "./valve-events.js";

/** One day of a season's calendar. A run over midnight starts on one day and has minutes on both. */
export interface CalendarDay {
  readonly date: string;
  readonly minutes: number;
  readonly starts: number;
  /** Clock time of the first start, hours since midnight; left out on a day without one. */
  readonly firstStartH?: number;
}

/**
 * Minutes and starts of the valve by day of the season.
 *
 * @param valveH openings and closings, hours since the first midnight: on, off ...
 * @example seasonCalendar(Float64Array.of(6, 7, 9, 10), "2025-12-01", 1) // [{ date: "2025-12-01", minutes: 120, starts: 2, firstStartH: 6 }]
 */
export function seasonCalendar(valveH: Float64Array, startDate: string, days: number): CalendarDay[] {
  const first = dayNumber(startDate);
  return Array.from({ length: days }, (_, day): CalendarDay => {
    const starts = valveH.filter((atH, e) => e % 2 === 0 && atH >= day * 24 && atH < day * 24 + 24);
    return {
      date: dateOf(first + day),
      minutes: openHours(valveH, day * 24, day * 24 + 24) * 60,
      starts: starts.length,
      ...(starts.length > 0 && { firstStartH: starts[0] - day * 24 }),
    };
  });
}
