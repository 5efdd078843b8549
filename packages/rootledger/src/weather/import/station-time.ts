import { dateOf } from "../../numeric/day-number.js";

/** ISO date and time of a stamp, with seconds only where they are not 0. @example stationTime(90) // "0000-03-01T01:30" */
export function stationTime(minutes: number): string {
  const seconds = Math.round(minutes * 60);
  const day = Math.floor(seconds / 86400);
  const ofDay = seconds - day * 86400;
  const two = (value: number): string => String(value).padStart(2, "0");
  const clock = `${two(Math.floor(ofDay / 3600))}:${two(Math.floor(ofDay / 60) % 60)}`;
  return `${dateOf(day)}T${clock}${ofDay % 60 === 0 ? "" : `:${two(ofDay % 60)}`}`;
}
