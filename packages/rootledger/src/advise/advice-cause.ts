import { airMemory } from "../water/air-memory.js";
import { column, type Result } from "../water/result.js";
import type { AdviceCase } from "./advice-case.js";
import { type AdviceChoice, changesBetween } from "./advice-choice.js";
import { fourOf, sumOver } from "./advice-run.js";

/** What the ground and its air do under one programme, with the scenario as said. */
export interface AdviceFacts {
  /** Share of the tree's ground within the wetted reach of the lines. */
  readonly wettedShare: number;
  /** Water that the rooted ground can lend between air-return and pull limit, L. */
  readonly windowL: number;
  /** Water that the tree wants on a mean day, L. */
  readonly wantedLPerDay: number;
  /** The same in the hours in which the lines are open. */
  readonly wantedWhileOpenLPerDay: number;
  readonly airlessRootH: number;
  /** Median hours from a closing until the air is back; undefined where half the pulses find it not back before the next one. */
  readonly recoveryH: number | undefined;
}

/** Why a programme does what it does against today's: one code and its numbers; sentences are made elsewhere. */
export type AdviceCause =
  | { readonly code: "as-today" }
  | {
      readonly code: "wetted-ground";
      readonly fromShare: number;
      readonly toShare: number;
      readonly fromWindowL: number;
      readonly toWindowL: number;
      readonly wantedLPerDay: number;
    }
  | {
      /** Whether one run, less what the tree draws on its day, fits what the wetted ground can lend. */
      readonly code: "run-within-window" | "run-beyond-window";
      readonly fromDays: number;
      readonly everyDays: number;
      readonly runL: number;
      readonly windowL: number;
      readonly wantedLPerDay: number;
    }
  | {
      readonly code: "water-amount";
      readonly fromLPerDay: number;
      readonly toLPerDay: number;
      readonly wantedLPerDay: number;
    }
  | { readonly code: "no-air-lost"; readonly fromPulses: number; readonly pulses: number }
  | {
      readonly code: "gap-covers-recovery" | "gap-shorter-than-recovery";
      readonly pulses: number;
      readonly gapH: number;
      readonly recoveryH: number | undefined;
    }
  | {
      readonly code: "one-run";
      readonly fromPulses: number;
      readonly gapH: number;
      readonly recoveryH: number | undefined;
    }
  | {
      readonly code: "start-hour";
      readonly fromH: number;
      readonly toH: number;
      /** What the tree wants on a mean day while the lines are open, under today's programme and under this one. */
      readonly fromWhileOpenL: number;
      readonly toWhileOpenL: number;
      readonly wantedLPerDay: number;
    };

/** Airless root-hours a day below which the roots count as never without air. Our choice, no source. */
const negligibleRootHPerDay = 0.1;

/** @param tree place among the trees of the result @example factsOf(result, ready, 0).windowL */
export function factsOf(result: Result, ready: AdviceCase, tree: number): AdviceFacts {
  const { fromDay, days } = ready;
  const { section, window } = result;
  let wetCm3 = 0;
  let allCm3 = 0;
  for (let j = 0; j < section.lanes; j++) {
    wetCm3 += section.wetByLane[j] * section.volumeCm3[j];
    allCm3 += section.volumeCm3[j];
  }
  const hours = airMemory(result, { tree })
    .filter(({ opensH }) => opensH >= fromDay * 24)
    .map(({ recoveryH }) => recoveryH ?? Number.POSITIVE_INFINITY)
    .sort((a, b) => a - b);
  const middle = hours[Math.floor(hours.length / 2)] ?? 0;
  return {
    wettedShare: wetCm3 / allCm3,
    windowL: window.litresPerTree,
    wantedLPerDay: sumOver(result, "wanted", fromDay, days, tree) / days,
    wantedWhileOpenLPerDay: wantedWhileOpenL(result, ready, tree) / days,
    airlessRootH: fourOf(result, ready, tree)[1],
    recoveryH: Number.isFinite(middle) ? middle : undefined,
  };
}

function wantedWhileOpenL({ hours, trees }: Result, { fromDay, days }: AdviceCase, tree: number): number {
  const wanted = column(hours, "wanted").values;
  const open = column(hours, "valveOpen").values;
  let sum = 0;
  for (let hour = fromDay * 24; hour < (fromDay + days) * 24; hour++) {
    const row = hour * trees.length + tree;
    sum += wanted[row] * open[row];
  }
  return sum;
}

/**
 * The cause of what differs: wetted ground first, then whether a run fits what it can lend, then water, then gaps against the time
 * that air takes to come back, then the clock.
 *
 * @example causeOf(ready, choice, facts, factsOfToday).code
 */
export function causeOf(
  ready: AdviceCase,
  choice: AdviceChoice,
  facts: AdviceFacts,
  ofToday: AdviceFacts,
): AdviceCause {
  const { today, todayLPerDay, days } = ready;
  const { windowL, wantedLPerDay, recoveryH } = facts;
  const changes = changesBetween(today, choice);
  const perDay = todayLPerDay * choice.waterFraction;
  if (changes.includes("lines")) {
    const { wettedShare: fromShare, windowL: fromWindowL } = ofToday;
    return {
      code: "wetted-ground",
      fromShare,
      toShare: facts.wettedShare,
      fromWindowL,
      toWindowL: windowL,
      wantedLPerDay,
    };
  }
  if (changes.includes("everyDays")) {
    const runL = perDay * choice.everyDays;
    return {
      code: runL - wantedLPerDay <= windowL ? "run-within-window" : "run-beyond-window",
      ...{ fromDays: today.everyDays, everyDays: choice.everyDays, runL, windowL, wantedLPerDay },
    };
  }
  if (changes.includes("waterFraction")) {
    return { code: "water-amount", fromLPerDay: todayLPerDay, toLPerDay: perDay, wantedLPerDay };
  }
  if (changes.includes("pulses") || changes.includes("gapMinutes")) {
    const { pulses } = choice;
    const fromPulses = today.pulses;
    const most = negligibleRootHPerDay * days;
    if (facts.airlessRootH <= most && ofToday.airlessRootH <= most) return { code: "no-air-lost", fromPulses, pulses };
    if (pulses === 1) {
      return { code: "one-run", fromPulses, gapH: today.gapMinutes / 60, recoveryH: ofToday.recoveryH };
    }
    const gapH = choice.gapMinutes / 60;
    const covers = recoveryH !== undefined && gapH >= recoveryH;
    return { code: covers ? "gap-covers-recovery" : "gap-shorter-than-recovery", pulses, gapH, recoveryH };
  }
  if (changes.includes("startH")) {
    return {
      code: "start-hour",
      ...{ fromH: today.startH, toH: choice.startH, wantedLPerDay },
      ...{ fromWhileOpenL: ofToday.wantedWhileOpenLPerDay, toWhileOpenL: facts.wantedWhileOpenLPerDay },
    };
  }
  return { code: "as-today" };
}
