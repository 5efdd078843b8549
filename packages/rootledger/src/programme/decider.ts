import { dateOf, dayNumber, daysInMonth, daysPerYear } from "../numeric/day-number.js";
import type { Ground } from "../water/ground.js";
import type { RootZone } from "../water/uptake.js";
import { depletionFinder } from "./depletion.js";
import type { Asked, Morning } from "./morning.js";
import { amountHours, type Programme } from "./programme.js";
import type { Amount, WateringRule } from "./rule.js";

/** What a programme needs to know of its block. */
export interface DeciderPlace {
  /** ISO date of the season's first day. */
  readonly startDate: string;
  readonly ground: Ground;
  readonly roots: RootZone;
  readonly treeFlowLPerH: number;
}

/** A programme that asks for runs once a day. */
export interface Decider {
  /** Whole hour of the day at which it decides. */
  readonly atH: number;
  readonly ask: (morning: Morning) => readonly Asked[];
}

/**
 * Makes the decider of a programme: of its rule, or of its calendar where that has limits. What a rule carries from day to
 * day lies in the morning's `memory` alone.
 *
 * @throws RangeError as `availableCells`, for a depletion trigger.
 * @example deciderOf(programme, place).atH // 6
 */
export function deciderOf(programme: Programme, place: DeciderPlace): Decider {
  const { rule, runs } = programme;
  const { treeFlowLPerH } = place;
  if (rule === undefined) {
    const first = runs.reduce((least, { startH }) => (startH < least ? startH : least), 23);
    const ask = ({ day }: Morning): Asked[] =>
      runs
        .filter((run) => due(run, day))
        .sort((a, b) => a.startH - b.startH)
        .map(({ startH, pulses, gapMinutes, amount }) => ({
          startH,
          minutes: amountHours(amount, treeFlowLPerH) * 60,
          pulses,
          gapMinutes,
        }));
    return { atH: Math.floor(first), ask };
  }
  const { startH, pulses, gapMinutes } = rule;
  const atH = Math.floor(startH);
  if (rule.kind === "own") return { atH, ask: (morning) => (due(rule, morning.day) ? rule.decide(morning) : []) };
  const minutesOf = minutesFinder(rule, place);
  return {
    atH,
    ask: (morning) => {
      const minutes = minutesOf(morning);
      return minutes > 0 && due(rule, morning.day) ? [{ startH, minutes, pulses, gapMinutes }] : [];
    },
  };
}

const due = (
  { firstDay, everyDays }: { readonly firstDay: number; readonly everyDays: number },
  day: number,
): boolean => day >= firstDay && (day - firstDay) % everyDays === 0;

type Rule = Exclude<WateringRule, { readonly kind: "own" }>;

/** What a rule would give this morning, in minutes of open valve. */
function minutesFinder(rule: Rule, place: DeciderPlace): (morning: Morning) => number {
  const { treeFlowLPerH } = place;
  const minutes = (amount: Amount): number => amountHours(amount, treeFlowLPerH) * 60;
  const firstDay = dayNumber(place.startDate);
  switch (rule.kind) {
    case "by-month":
      return ({ day }) => {
        const [year, month] = dateOf(firstDay + day)
          .split("-")
          .map(Number);
        const days = rule.per === "month" ? daysInMonth(year, month) : 1;
        return (minutes(rule.amounts[month - 1]) / days) * rule.everyDays;
      };
    case "by-age":
      return ({ day }) => {
        const age = rule.ageYearsAtStart + day / daysPerYear;
        const step = rule.amounts.filter(({ fromYears }) => fromYears <= age).at(-1);
        return step === undefined ? 0 : minutes(step.amount) * rule.everyDays;
      };
    case "replace-use":
      return (morning) => {
        const { memory } = morning;
        memory[owedL] += morning.transpiredL + morning.evaporatedL - morning.rootedRainL;
        if (memory[owedL] < 0) memory[owedL] = 0;
        return ((memory[owedL] * rule.factor) / treeFlowLPerH) * 60;
      };
    case "depletion": {
      const depletion = depletionFinder(place.ground, place.roots);
      return ({ theta }) => {
        const { fraction, lackingL } = depletion(theta);
        if (!(fraction > rule.aboveFraction)) return 0;
        return rule.amount === undefined ? (lackingL / treeFlowLPerH) * 60 : minutes(rule.amount);
      };
    }
    case "tension":
      return ({ tensionKPa }) => (tensionKPa(rule.depthCm, rule.fromLineCm) > rule.aboveKPa ? minutes(rule.amount) : 0);
  }
}

/** Mean of the Gregorian calendar. */

/** Place in a rule's memory: what `replace-use` has not given back yet, L per tree. */
const owedL = 0;

/**
 * Takes what was given off what a rule owes; rules that owe nothing are left alone.
 *
 * @example settleOwed(rule, memory, 96)
 */
export function settleOwed(rule: WateringRule | undefined, memory: Float64Array, givenL: number): void {
  if (rule?.kind === "replace-use") memory[owedL] -= givenL / rule.factor;
}
