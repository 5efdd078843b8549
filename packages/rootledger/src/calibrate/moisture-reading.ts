import type { SensorPlace } from "../advise/sensor-place.js";

/** A reading of a soil-moisture probe: hours since the season's first midnight, above 0; m3/m3. */
export interface MoistureReading extends SensorPlace {
  readonly hour: number;
  readonly theta: number;
}

/** Readings by place, then by time. */
export interface ReadingOrder {
  readonly sorted: readonly MoistureReading[];
  readonly places: readonly SensorPlace[];
  /** Number of each reading's place. */
  readonly placeOf: readonly number[];
}

/**
 * Readings by place and time, and their places.
 *
 * @throws RangeError if there is no reading, one lies outside the season or is no water content, or a place has two in one hour.
 * @example readingOrder([{ hour: 12, theta: 0.3, depthCm: 20, fromLineCm: 10 }], 30).places.length // 1
 */
export function readingOrder(readings: readonly MoistureReading[], seasonDays: number): ReadingOrder {
  if (readings.length === 0) throw new RangeError("calibrate requires readings: got none");
  const places: SensorPlace[] = [];
  const placeAt = ({ depthCm, fromLineCm }: SensorPlace): number =>
    places.findIndex((place) => place.depthCm === depthCm && place.fromLineCm === fromLineCm);
  for (const reading of readings) {
    const { hour, theta, depthCm, fromLineCm } = reading;
    if (!(hour >= 0.5 && hour <= seasonDays * 24)) {
      throw new RangeError(`calibrate requires readings within the season, 1 to ${seasonDays * 24} h: got ${hour}`);
    }
    if (!(theta > 0 && theta < 1))
      throw new RangeError(`calibrate requires theta between 0 and 1: got ${theta} at ${hour} h`);
    if (placeAt(reading) < 0) places.push({ depthCm, fromLineCm });
  }
  const sorted = readings
    .map((reading) => ({ reading, place: placeAt(reading) }))
    .sort((a, b) => a.place - b.place || a.reading.hour - b.reading.hour);
  const twice = sorted.find(({ reading, place }, i) => {
    const before = sorted[i - 1];
    return before?.place === place && Math.round(before.reading.hour) === Math.round(reading.hour);
  });
  if (twice !== undefined) {
    const { depthCm, hour } = twice.reading;
    throw new RangeError(
      `calibrate requires one reading an hour at each place: got two at ${depthCm} cm, hour ${hour}`,
    );
  }
  return { sorted: sorted.map(({ reading }) => reading), places, placeOf: sorted.map(({ place }) => place) };
}
