import { usualInjection } from "../../lines/fertigation.js";
import { dateOf, dayNumber } from "../../numeric/day-number.js";
import { type DecidedInjection, decidedInjection, type NotGiven } from "../../programme/decided-injection.js";
import { type Injection, injectionSchedule } from "../../programme/injection.js";
import { isDecided, type Programme, pulseHours } from "../../programme/programme.js";
import { saltMgPerL } from "../../tree/salinity-water.js";
import { minutesPerH } from "../../units.js";
import type { Prepared } from "../ground-of.js";
import type { Scenario } from "../scenario.js";
import { momentsUpTo } from "../tree-run.js";

const mgPerCm3PerMgPerL = 1e-3;
const cm2PerM2 = 1e4;
const mgPerG = 1000;

/** Salt of the emitters' water, mg/cm3. @example saltContentOf(1) // 0.64 */
export const saltContentOf = (ecDsPerM: number): number => saltMgPerL(ecDsPerM) * mgPerCm3PerMgPerL;

/** Nitrogen of the emitters' water over a season. */
export interface LineNitrogen {
  readonly eventsH: Float64Array;
  /** Of runs that are decided day by day. */
  readonly injection?: DecidedInjection;
  /** Content at an hour, mg/cm3. */
  readonly at: (hour: number) => number;
  readonly notes: () => readonly string[];
}

/** @example lineNitrogen(scenario, prepared).at(6.5) */
export function lineNitrogen({ block, programme, season }: Scenario, prepared: Prepared): LineNitrogen {
  const own = (block.nitrogen?.waterMgPerL ?? 0) * mgPerCm3PerMgPerL;
  const injection = programme.nitrogen?.throughWater;
  const none = new Float64Array(0);
  if (injection === undefined) return { eventsH: none, at: () => own, notes: () => [] };
  const { treeFlowLPerH, groundCm2 } = prepared;
  const { startDate, days } = season;
  const place = { startDate, days, treeFlowLPerH, groundM2: groundCm2 / cm2PerM2 };
  const contentAt = (eventsH: ArrayLike<number>, mgPerL: ArrayLike<number>, hour: number): number => {
    const passed = momentsUpTo(eventsH, hour);
    return passed % 2 === 1 ? own + mgPerL[(passed - 1) / 2] * mgPerCm3PerMgPerL : own;
  };
  if (isDecided(programme)) {
    const decided = decidedInjection(injection, place);
    const at = (hour: number): number => contentAt(decided.eventsH(), decided.mgPerL(), hour);
    return { eventsH: none, injection: decided, at, notes: () => decidedNotes(decided.notGiven()) };
  }
  const { eventsH, mgPerL, notGivenKgPerHa } = injectionSchedule(programme.runs, injection, place);
  const notes = [
    ...notGivenKgPerHa.map(
      ({ month, kgPerHa }) =>
        `${kgPerHa.toPrecision(3)} kg/ha of nitrogen of month ${month} not given: no run carries it`,
    ),
    ...flushNotes(programme, injection, treeFlowLPerH),
  ];
  return { eventsH, at: (hour) => contentAt(eventsH, mgPerL, hour), notes: () => notes };
}

/** What runs decided day by day did not carry. */
function decidedNotes({ kgPerHa, shortRuns, gPerTree, leastFlushMinutes }: NotGiven): string[] {
  const found: string[] = [];
  if (kgPerHa > 1e-9) found.push(`${kgPerHa.toPrecision(3)} kg/ha of nitrogen not given: no run carried it`);
  if (shortRuns > 0) {
    const grams = gPerTree > 0 ? `, ${gPerTree.toPrecision(3)} g per tree not given` : "";
    found.push(`${shortRuns} runs ended before the injection of nitrogen began${grams}`);
  }
  return [...found, ...flushNote(leastFlushMinutes)];
}

/** Runs that end sooner after the injection than is usual. */
function flushNotes({ runs }: Programme, { afterMinutes, injectMinutes }: Injection, treeFlowLPerH: number): string[] {
  const shortest = Math.min(...runs.map((run) => run.pulses * pulseHours(run, treeFlowLPerH) * minutesPerH));
  return flushNote(shortest - afterMinutes - injectMinutes);
}

function flushNote(flush: number): string[] {
  const { flushMinutes } = usualInjection;
  if (!(flush < flushMinutes - 1e-9)) return [];
  const clean = flush > 0 ? flush : 0;
  return [
    `${clean.toPrecision(3)} min of clean water after the injection; ${flushMinutes} are usual, else product stays in the lines`,
  ];
}

/** Mass laid on each lane at an hour of the season, mg. */
export interface LaidDose {
  readonly hour: number;
  readonly byLaneMg: Float64Array;
}

/** Doses by hand, spread over the lanes, in order of time. @throws RangeError if no ground of the asked kind is there. @example laidDoses(scenario, prepared, rootless) */
export function laidDoses({ programme, season }: Scenario, prepared: Prepared, rootless: Uint8Array): LaidDose[] {
  const { grid, exposedByLane } = prepared;
  const first = dayNumber(season.startDate);
  const doses = (programme.nitrogen?.byHand ?? []).map(({ date, gPerTree, ground }): LaidDose => {
    const areas = grid.laneAreaCm2.map((area, j) =>
      ground === "all-ground"
        ? area
        : ground === "rooted-ground"
          ? area * (1 - rootless[j])
          : area * (1 - exposedByLane[j]),
    );
    const whole = areas.reduce((sum, area) => sum + area, 0);
    if (!(whole > 0)) throw new RangeError(`laidDoses requires ground of the kind ${ground}: got none`);
    const hour = (dayNumber(date) - first) * 24;
    if (!(hour >= 0 && hour < season.days * 24)) {
      const last = dateOf(first + season.days - 1);
      throw new RangeError(`laidDoses requires a date from ${season.startDate} to ${last}: got ${date}`);
    }
    return { hour, byLaneMg: areas.map((area) => (area / whole) * gPerTree * mgPerG) };
  });
  return doses.sort((a, b) => a.hour - b.hour);
}
