import type { CancelSignal } from "../chance/executor.js";
import { floorOf } from "../compare/floors.js";
import { everyPart } from "../scenario/every-part.js";
import type { EngineName, Scenario } from "../scenario/scenario.js";
import { createSimulation } from "../scenario/simulation.js";
import type { Result } from "../water/result.js";
import type { Advice, AdviceMember } from "./advice.js";
import { type AdviceQuestion, adviceCase } from "./advice-case.js";
import { fourOf } from "./advice-run.js";
import { type AdviceMeasureId, adviceMeasures } from "./advice-set.js";

/** What the slow engine says of one measure of one member against today's. */
export interface CheckedDifference {
  readonly programme: string;
  readonly measureId: AdviceMeasureId;
  readonly unit: string;
  /** Member less today's, by each engine. */
  readonly fast: number;
  readonly slow: number;
  readonly floor: number;
  /**
   * `not-clear`: the fast engine's difference is within its floor. Else `holds`: both go the same way; `fades`: the slow engine's
   * lies within the floor; `reversed`: it goes the other way, beyond the floor.
   */
  readonly verdict: "holds" | "fades" | "reversed" | "not-clear";
}

/** What the slow engine says of the fast one's set. */
export interface AdviceCheck {
  readonly days: number;
  readonly status: "finished" | "stopped";
  readonly differences: readonly CheckedDifference[];
  /** No difference was reversed. */
  readonly rankingHolds: boolean;
}

/** How a set is checked. */
export interface AdviceCheckOptions {
  /** From the season's first day and the stated tension, by both engines; default 7. */
  readonly days?: number;
  /** Awaited after each simulated hour. */
  readonly pause?: () => Promise<void>;
  /** Called after each run. */
  readonly onProgress?: (done: number, all: number) => void;
  readonly cancel?: CancelSignal;
}

const usualDays = 7;

/**
 * Runs today's programme and every member of the set by Richards' equation and by the fast engine, over the same few days from one
 * state, and says whether differences beyond their floors keep their direction. About a second a programme and day.
 *
 * @throws RangeError if the days do not lie in the season, or a run fails.
 * @example (await checkAdvice({ scenario }, advice, { days: 7 })).rankingHolds
 */
export async function checkAdvice(
  question: AdviceQuestion,
  advice: Advice,
  { days = usualDays, pause, onProgress, cancel = { aborted: false } }: AdviceCheckOptions = {},
): Promise<AdviceCheck> {
  const ready = adviceCase(question);
  if (!(Number.isInteger(days) && days > 0 && days <= question.scenario.season.days)) {
    throw new RangeError(`checkAdvice requires whole days within the season: got ${days}`);
  }
  const members = [advice.today, ...advice.set.filter(({ isToday }) => !isToday)];
  const all = members.length * 2 * days * 24;
  let done = 0;
  async function run(member: AdviceMember, engine: EngineName): Promise<Result | undefined> {
    const { scenario, limits } = ready;
    const { programme, lines } = member;
    const asked: Scenario = {
      ...scenario,
      engine,
      season: { ...scenario.season, days },
      block: { ...scenario.block, lines },
      programme: Object.keys(limits).length === 0 ? programme : { ...programme, limits },
      start: { ...scenario.start, kind: "same-state" },
    };
    const simulation = createSimulation(asked, { ...everyPart(asked), trees: ["mean"] });
    while (simulation.status().kind === "running") {
      if (cancel.aborted) return undefined;
      simulation.step();
      onProgress?.(++done, all);
      if (pause) await pause();
    }
    const result = simulation.result();
    if (result.status.kind === "failed")
      throw new RangeError(`checkAdvice requires runs that end: ${result.status.message}`);
    return result;
  }
  const differences: CheckedDifference[] = [];
  const stopped: AdviceCheck = { days, status: "stopped", differences, rankingHolds: false };
  const window = { fromDay: 0, days };
  const fastToday = await run(advice.today, "bucket");
  const slowToday = fastToday && (await run(advice.today, "richards"));
  if (fastToday === undefined || slowToday === undefined) return stopped;
  for (const member of members.slice(1)) {
    const fast = await run(member, "bucket");
    const slow = fast && (await run(member, "richards"));
    if (fast === undefined || slow === undefined) return stopped;
    const onlyPulses = member.changes.every((key) => key === "pulses" || key === "gapMinutes");
    adviceMeasures.forEach(({ id, unit }, m) => {
      const of = (a: Result, b: Result): number => fourOf(b, window, 0)[m] - fourOf(a, window, 0)[m];
      const floor = floorOf(id, fastToday, ready.scenario.soil, [onlyPulses ? "pulses" : "interval"], 0).size;
      const [byFast, bySlow] = [of(fastToday, fast), of(slowToday, slow)];
      const verdict = verdictOf(byFast, bySlow, floor);
      differences.push({
        programme: member.programme.name,
        measureId: id,
        unit,
        fast: byFast,
        slow: bySlow,
        floor,
        verdict,
      });
    });
  }
  return {
    ...{ days, status: "finished", differences },
    rankingHolds: differences.every(({ verdict }) => verdict !== "reversed"),
  };
}

function verdictOf(fast: number, slow: number, floor: number): CheckedDifference["verdict"] {
  if (!(Math.abs(fast) > floor)) return "not-clear";
  if (fast > 0 === slow > 0 && slow !== 0) return "holds";
  return Math.abs(slow) > floor ? "reversed" : "fades";
}
