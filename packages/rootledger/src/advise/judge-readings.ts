import { dateOf, dayNumber } from "../numeric/day-number.js";
import { sensorCell } from "../programme/sensor-cell.js";
import { groundOf } from "../scenario/ground-of.js";
import { isWithin } from "../scenario/limits-by-day.js";
import type { Limits, Scenario } from "../scenario/scenario.js";
import { youngTree } from "../scenario/young-tree.js";
import { headFromTension } from "../units.js";
import type { SensorPlace } from "./sensor-place.js";
import type { SensorTwin } from "./sensor-twin.js";

/** A reading of a tensiometer: hours since the season's first midnight, kPa. */
export interface Reading extends SensorPlace {
  readonly hour: number;
  readonly tensionKPa: number;
}

/** Working range of a tensiometer, kPa. Source: North Carolina State University AG-452-2; New Mexico State University notes. */
export const tensiometerRangeKPa: readonly [number, number] = [0, 80];

/** Whether a reading is where the twin expects it. */
export type ReadingState = "thirsty" | "fine" | "airless";

/** One reading and what the twin says of it. */
export interface JudgedReading {
  readonly reading: Reading;
  /** What the reading says by the tree's limits. Airless only where that tension leaves too little air in this soil. */
  readonly state: ReadingState;
  /** What the twin expected at that hour and place, with its band; left out outside the twin's hours or places. */
  readonly expected?: { readonly tensionKPa: number; readonly lowKPa: number; readonly highKPa: number };
  /** Whether the reading lies in the band. */
  readonly agrees?: boolean;
  /** Beyond what the instrument can read. */
  readonly outOfRange: boolean;
}

/** What all readings together say. */
export interface ReadingsVerdict {
  readonly readings: readonly JudgedReading[];
  readonly counts: Readonly<Record<ReadingState, number>>;
  /** Readings inside and outside the twin's band, of those that have one. */
  readonly inside: number;
  readonly outside: number;
}

/**
 * Reads own sensor values against the tree's two limits and against the twin: which case they speak for, and whether they
 * lie in the band expected.
 *
 * @throws RangeError if a tension is not finite or below 0, or a place lies outside the section.
 * @example judgeReadings(scenario, [{ hour: 31, depthCm: 20, fromLineCm: 10, tensionKPa: 4 }], { fromHour: 24, sensors }).counts.airless
 */
export function judgeReadings(
  scenario: Scenario,
  readings: readonly Reading[],
  twin: { readonly fromHour: number; readonly sensors: readonly SensorTwin[] },
): ReadingsVerdict {
  const { grid, ground, lineAtCm } = groundOf(scenario, { youngTree });
  const counts = { thirsty: 0, fine: 0, airless: 0 };
  let inside = 0;
  let outside = 0;
  const judged = readings.map((reading): JudgedReading => {
    const { hour, tensionKPa, depthCm, fromLineCm } = reading;
    if (!(tensionKPa >= 0 && tensionKPa < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`judgeReadings requires tensions from 0 kPa: got ${tensionKPa}`);
    }
    const cell = sensorCell(grid, lineAtCm[0], reading);
    const limits = limitsAt(scenario, hour);
    const { thetaSaturated, thetaAt } = ground.tables[ground.material[cell]].curve;
    const air = thetaSaturated - thetaAt(headFromTension(tensionKPa));
    const airless = tensionKPa < limits.airReturnKPa && air < limits.airLimitFraction;
    const state: ReadingState = tensionKPa > limits.pullLimitKPa ? "thirsty" : airless ? "airless" : "fine";
    counts[state] += 1;
    const sensor = twin.sensors.find(({ place }) => place.depthCm === depthCm && place.fromLineCm === fromLineCm);
    const at = Math.round(hour) - twin.fromHour;
    const outOfRange = tensionKPa > tensiometerRangeKPa[1];
    if (sensor === undefined || at < 0 || at >= sensor.tensionKPa.length) return { reading, state, outOfRange };
    const expected = { tensionKPa: sensor.tensionKPa[at], lowKPa: sensor.lowKPa[at], highKPa: sensor.highKPa[at] };
    const agrees = tensionKPa >= expected.lowKPa && tensionKPa <= expected.highKPa;
    if (agrees) inside++;
    else outside++;
    return { reading, state, expected, agrees, outOfRange };
  });
  return { readings: judged, counts, inside, outside };
}

/** The tree's limits on the day of an hour; those of its period, if one holds. */
function limitsAt({ season, block }: Scenario, hour: number): Limits {
  const { limits } = block.tree;
  const date = dateOf(dayNumber(season.startDate) + Math.floor(hour / 24));
  const period = limits.periods?.find((p) => isWithin(p, date.slice(5)));
  return { ...limits, ...period?.limits };
}
