import { dateOf, dayNumber } from "../numeric/day-number.js";
import { runSpanHours } from "../programme/programme.js";
import { treesOf } from "../scenario/supply.js";
import { version } from "../version.js";
import type { Advice, AdviceAnswer, AdviceCaution, AdviceMeasure, AdviceMember } from "./advice.js";
import { type AdviceCase, type AdviceQuestion, adviceCase, treeFlow } from "./advice-case.js";
import { causeOf, factsOf } from "./advice-cause.js";
import { changesBetween, programmeOf } from "./advice-choice.js";
import { limitBroken } from "./advice-limits.js";
import { adviceNumbers, adviceStarts, advisedSeason, fourOf } from "./advice-run.js";
import { type AdviseOptions, adviceSearch, type SearchEnd } from "./advice-search.js";
import {
  adviceMeasures,
  alikeForRoots,
  bandOf,
  clearSomewhere,
  differenceOf,
  type Tried,
  worseNowhere,
} from "./advice-set.js";

const sameWaterFraction = 0.01;

/**
 * Advice on when and how to water: a search over pulses, gap, interval and start (water and lines if asked) under the limits of
 * pump, tariff and water right, from today's programme, with today's water unless it may change. It returns the trade-off set on
 * four measures over the days that count: thirsty and airless root-hours, litres below the roots, pump starts. Never one score. A
 * difference counts if it is beyond the floor of its measure (the model's own error or the smallest that matters) in every draw;
 * the same draws for every candidate. No programme one step away in one decision is clearly better than a member on all four.
 * Every candidate goes on from the state that today's programme left, runs the lead days uncounted, and pays the filling and
 * emptying of lines that drain at each start. Deterministic; the executor is the caller's.
 *
 * @throws RangeError if today's programme is no calendar, days do not fit (see `AdviceQuestion`), it cannot be run, or the search is
 * stopped before today's programme was.
 * @example (await advise({ scenario, days: 14 })).answer // "choice"
 */
export async function advise(question: AdviceQuestion, options: AdviseOptions = {}): Promise<Advice> {
  const ready = adviceCase(question);
  const found = await adviceSearch(ready, options);
  const { tried, today, set, cuts, status } = found;
  const memberOf = memberMaker(ready, found);
  const ofToday = memberOf(today);
  const all = 1 + (ready.draws?.members ?? 0);
  const { scenario, draws, fromDay, days, leadDays, tree, water, ladders } = ready;
  return {
    ...{ version, name: scenario.name, status, tree, water, ladders },
    answer: answerOf(found),
    horizon: { fromDate: dateOf(dayNumber(scenario.season.startDate) + fromDay), days, leadDays },
    draws: {
      counted: found.draws.length,
      failed: all - found.draws.length,
      ...(draws === undefined ? {} : { source: draws.source }),
    },
    candidates: {
      tried: tried.length,
      cut: [...cuts]
        .map(([reason, candidates]) => ({ reason, candidates }))
        .sort((a, b) => b.candidates - a.candidates),
    },
    today: ofToday,
    set: set.map((one) => (one === today ? ofToday : memberOf(one))),
    cautions: cautionsOf(question, ready),
  };
}

function answerOf({ tried, today, set }: SearchEnd): AdviceAnswer {
  const others = set.filter((one) => one !== today);
  if ((others.length > 0 ? others : tried).every((one) => alikeForRoots(one, today))) return "same-for-both";
  const clear = others.filter((one) => clearSomewhere(one, today));
  if (clear.length === 0) return "keep-today";
  return clear.some((one) => worseNowhere(one, today)) ? "better" : "choice";
}

function memberMaker(ready: AdviceCase, { today, draws }: SearchEnd): (one: Tried) => AdviceMember {
  const { scenario, lines: allLines, todayLPerDay } = ready;
  const { treeSpacingM } = scenario.block;
  const trees = treesOf(scenario.block);
  const tree = trees.indexOf(ready.tree);
  const starts = adviceStarts(ready, trees);
  const programmeFor = (one: Tried) => (one === today ? scenario.programme : programmeOf(one.choice, todayLPerDay));
  const seasonOf = (one: Tried) => advisedSeason(starts(draws[0], one.choice.lines), programmeFor(one), ready, trees);
  const factsOfToday = factsOf(seasonOf(today), ready, tree);
  return (one) => {
    const { choice } = one;
    const lines = allLines[choice.lines];
    const flow = treeFlow(lines, treeSpacingM);
    const { limits: _, ...programme } = programmeFor(one);
    const result = seasonOf(one);
    const facts = factsOf(result, ready, tree);
    const isToday = one === today;
    const litresPerDay = todayLPerDay * choice.waterFraction;
    const litresPerRun = litresPerDay * choice.everyDays;
    const valveL = one.numbers[0][adviceNumbers.valveL];
    const todayL = today.numbers[0][adviceNumbers.valveL];
    const apartFraction = Math.abs(valveL - todayL) / Math.max(valveL, todayL);
    return {
      ...{ choice, programme, lines, isToday, litresPerRun, litresPerDay, facts },
      changes: isToday ? [] : changesBetween(today.choice, choice),
      minutesPerPulse: (litresPerRun / choice.pulses / flow) * 60,
      lastStopH: Math.max(...programme.runs.map((run) => run.startH + runSpanHours(run, flow))),
      measures: adviceMeasures.map(({ id, unit }, m): AdviceMeasure => {
        const { low, median, high } = bandOf(one.numbers.map((numbers) => numbers[adviceMeasures[m].at]));
        return { id, unit, low, high, value: median, difference: differenceOf(today, one, m) };
      }),
      water: { valveL, apartFraction, same: apartFraction <= sameWaterFraction },
      cause: isToday ? { code: "as-today" } : causeOf(ready, choice, facts, factsOfToday),
      trees: trees.map((name, t) => {
        const [thirsty, airless, belowRoots, pumpStarts] = fourOf(result, ready, t);
        return { tree: name, thirsty, airless, "below-roots": belowRoots, "pump-starts": pumpStarts };
      }),
    };
  };
}

function cautionsOf({ scenario }: AdviceQuestion, ready: AdviceCase): AdviceCaution[] {
  const { limits } = ready;
  const cautions: AdviceCaution[] = [];
  if (scenario.programme.nitrogen !== undefined) cautions.push("nitrogen-left-out");
  if (limits.skipFromRainMm !== undefined) cautions.push("rain-skipped");
  if (limitBroken(ready.scenario.programme, 0, ready) !== undefined) cautions.push("today-cut");
  return [...cautions, "spade-decides", "no-yield"];
}
