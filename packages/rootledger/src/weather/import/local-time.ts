import type { StationAnswers } from "./answers.js";
import type { Assumption } from "./station-report.js";

export interface LocalTime {
  /** Minutes ahead of UTC of the local standard time into which the stamps were brought; undefined where the file does not say. */
  readonly utcOffsetMinutes: number | undefined;
  readonly assumptions: readonly Assumption[];
}

/** Minutes of "+01:00". @example offsetOf("-07:00") // -420 */
export function offsetOf(text: string): number {
  const minutes = Number(text.slice(1, 3)) * 60 + Number(text.slice(4, 6));
  return text.startsWith("-") ? -minutes : minutes;
}

/** "+01:00" of 60. @example offsetText(-420) // "-07:00" */
export function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/**
 * Brings stamps with offsets, or of a file in a named zone, to local standard time, in place. Among several offsets the smallest is that of standard
 * time: clocks are put forward in summer. UTC is brought to the zone of the station's longitude (15 degrees an hour) where the file says it.
 */
export function toLocalTime(
  minutes: Float64Array,
  offsetMinutes: Float64Array,
  headerZoneMinutes: number,
  longitudeDeg: number | undefined,
  answers: StationAnswers,
): LocalTime {
  let smallest = Number.NaN;
  for (const offset of offsetMinutes) if (!Number.isNaN(offset) && !(smallest <= offset)) smallest = offset;
  const answered = answers.zone === undefined ? Number.NaN : offsetOf(answers.zone);
  const ofFile = Number.isNaN(smallest) ? (Number.isNaN(answered) ? headerZoneMinutes : answered) : smallest;
  if (Number.isNaN(ofFile)) return { utcOffsetMinutes: undefined, assumptions: [] };
  const assumptions: Assumption[] = [];
  let local = ofFile;
  const wanted = answers["local-zone"];
  if (wanted !== undefined) local = offsetOf(wanted);
  else if (ofFile === 0 && longitudeDeg !== undefined) {
    local = Math.round(longitudeDeg / 15) * 60;
    assumptions.push({
      key: "local-zone",
      taken: offsetText(local),
      because: `times are UTC, and the station is at longitude ${longitudeDeg}`,
    });
  } else if (ofFile === 0) {
    assumptions.push({
      key: "local-zone",
      taken: "+00:00",
      because: "times are UTC and the file does not say where the station is: days are those of UTC",
    });
  }
  for (let i = 0; i < minutes.length; i++) {
    const own = Number.isNaN(offsetMinutes[i]) ? ofFile : offsetMinutes[i];
    minutes[i] += local - own;
  }
  return { utcOffsetMinutes: local, assumptions };
}
