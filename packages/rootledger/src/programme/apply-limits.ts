import type { Cut, CutReason } from "../water/watering-book.js";
import type { Asked } from "./morning.js";
import type { PumpLimits } from "./rule.js";
import { openHours } from "./valve-events.js";

/** Shorter than this an opening is none, minutes: what rounding leaves of a run that was cut to nothing. */
const noMinutes = 1e-6;

/** What limits know when a run is decided. */
export interface LimitsNow {
  readonly day: number;
  /** Rain of the day before the decision, mm. */
  readonly rainMm: number;
  /** Openings and closings so far, h: on, off ... */
  readonly valveH: ArrayLike<number>;
  /** Hour at which all openings decided on now must have ended. */
  readonly untilH: number;
  /** Flow of the valve for one tree, L/h, and ground of one tree, m2: for the season's allocation. */
  readonly treeFlowLPerH: number;
  readonly groundM2: number;
}

/** What is left of the runs asked for: openings and closings, h, and what was cut of each run. */
export interface Limited {
  readonly openingsH: readonly number[];
  /** The same run by run; a run that was cut to nothing has none. */
  readonly runsH: readonly (readonly number[])[];
  readonly givenRuns: number;
  readonly cuts: readonly Cut[];
}

/**
 * Cuts the runs asked for today to what the limits allow: rain, longest run, pump hours of the day over the sectors,
 * allocation, shortest pulse (fewer and longer ones), then pulse by pulse the allowed hours, the pump hours by the clock and
 * the run before. Minutes asked for = minutes of the openings + minutes of all cuts.
 *
 * @example applyLimits([{ startH: 6, minutes: 300, pulses: 1, gapMinutes: 0 }], { longestRunMinutes: 240 }, now).cuts // one of 60 min
 */
export function applyLimits(asked: readonly Asked[], limits: PumpLimits, now: LimitsNow): Limited {
  const openingsH: number[] = [];
  const runsH: number[][] = [];
  const cuts: Cut[] = [];
  for (const run of asked) {
    const opened = openingsH.length;
    applyToRun(run, limits, now, openingsH, cuts);
    if (openingsH.length > opened) runsH.push(openingsH.slice(opened));
  }
  return { openingsH, runsH, givenRuns: runsH.length, cuts };
}

function applyToRun(run: Asked, limits: PumpLimits, now: LimitsNow, openingsH: number[], cuts: Cut[]): void {
  const { day } = now;
  const lost = new Map<CutReason, number>();
  const lose = (reason: CutReason, minutes: number): void => {
    if (minutes > 0) lost.set(reason, (lost.get(reason) ?? 0) + minutes);
  };
  let minutes = run.minutes;
  const upTo = (most: number, reason: CutReason): void => {
    const kept = most > noMinutes ? most : 0;
    if (minutes <= kept) return;
    lose(reason, minutes - kept);
    minutes = kept;
  };
  const opened = Float64Array.from([...Array.from(now.valveH), ...openingsH]);
  const shareH = pumpShareH(limits);
  const leftOn = (ofDay: number): number =>
    shareH - openHours(Float64Array.from([...Array.from(now.valveH), ...openingsH]), ofDay * 24, ofDay * 24 + 24);
  if (limits.skipFromRainMm !== undefined && now.rainMm >= limits.skipFromRainMm) upTo(0, "rain");
  if (limits.longestRunMinutes !== undefined) upTo(limits.longestRunMinutes, "longest-run");
  if (shareH < 24) upTo(shareH * 60, "pump-hours");
  if (limits.allocationM3PerHa !== undefined) {
    const seasonL = limits.allocationM3PerHa * 0.1 * now.groundM2;
    const usedH = openHours(opened, 0, Number.POSITIVE_INFINITY);
    upTo((seasonL / now.treeFlowLPerH - usedH) * 60, "allocation");
  }
  const shortest = limits.shortestPulseMinutes ?? 0;
  if (minutes < shortest) upTo(0, "shortest-pulse");
  let { pulses } = run;
  if (minutes > 0 && minutes / pulses < shortest) {
    pulses = Math.floor(minutes / shortest);
    lost.set("fewer-pulses", 0);
  }
  const lengthH = minutes / pulses / 60;
  for (let pulse = 0; pulse < pulses && lengthH > 0; pulse++) {
    const plannedH = day * 24 + run.startH + pulse * (lengthH + run.gapMinutes / 60);
    let onH = plannedH;
    let offH = plannedH + lengthH;
    const keep = (fromH: number, toH: number, reason: CutReason): void => {
      const before = offH - onH;
      if (fromH > onH) onH = fromH < offH ? fromH : offH;
      if (toH < offH) offH = toH > onH ? toH : onH;
      lose(reason, (before - (offH - onH)) * 60);
    };
    keep(lastClosingH(now.valveH, openingsH), now.untilH, "overlap");
    if (limits.allowed) keep(...allowedStretch(limits.allowed, onH), "allowed-hours");
    if (shareH < 24) keep(onH, pumpEndH(onH, leftOn), "pump-hours");
    const given = (offH - onH) * 60;
    if (given > noMinutes && given >= shortest - noMinutes) openingsH.push(onH, offH);
    else lose("shortest-pulse", given);
  }
  for (const [reason, of] of lost) cuts.push({ day, reason, minutes: of });
}

const lastClosingH = (valveH: ArrayLike<number>, openingsH: readonly number[]): number =>
  openingsH.at(-1) ?? (valveH.length > 0 ? valveH[valveH.length - 1] : 0);

/** Hours of one day that are one sector's: pump hours, or the allowed hours, or the day, shared by the sectors. */
function pumpShareH({ pumpHoursPerDay = 24, sectors = 1, allowed }: PumpLimits): number {
  const openH = allowed === undefined || sectors === 1 ? 24 : allowedHours(allowed);
  return (pumpHoursPerDay < openH ? pumpHoursPerDay : openH) / sectors;
}

const allowedHours = ({ fromH, toH }: NonNullable<PumpLimits["allowed"]>): number =>
  (((toH - fromH) % 24) + 24) % 24 || 24;

/** The allowed stretch that holds a moment, or an empty one at that moment. */
function allowedStretch(allowed: NonNullable<PumpLimits["allowed"]>, atH: number): [number, number] {
  const sinceH = (((atH - allowed.fromH) % 24) + 24) % 24;
  const lengthH = allowedHours(allowed);
  if (lengthH === 24) return [atH, Number.POSITIVE_INFINITY];
  return sinceH < lengthH ? [atH, atH - sinceH + lengthH] : [atH, atH];
}

/** When a run that opens at a moment has used up what is left of that day's hours, or of the next one's after midnight. */
function pumpEndH(onH: number, leftOn: (day: number) => number): number {
  const day = Math.floor(onH / 24);
  const midnightH = day * 24 + 24;
  const endH = onH + leftOn(day);
  if (endH < midnightH) return endH;
  const nextEndH = midnightH + leftOn(day + 1);
  return nextEndH < midnightH + 24 ? nextEndH : midnightH + 24;
}
