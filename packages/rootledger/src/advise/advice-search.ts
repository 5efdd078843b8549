import type { CancelSignal, Executor } from "../chance/executor.js";
import { oneThread } from "../chance/executor.js";
import type { AdviceCase } from "./advice-case.js";
import { type AdviceChoice, choiceKey, neighboursOf, programmeOf, withPulses } from "./advice-choice.js";
import { type CandidateCut, limitBroken } from "./advice-limits.js";
import { type AdviceBatch, type AdvicePoint, adviceNumbers, adviceRun, adviceStarts, drawsOf } from "./advice-run.js";
import { type Tried, tradeOffSet } from "./advice-set.js";

/** How a search is run; nothing here changes what is found. */
export interface AdviseOptions {
  /** Where a batch is run: `(batch) => oneThread(adviceRun(batch))`, or workers. Default the calling thread. */
  readonly executorOf?: (batch: AdviceBatch) => Executor;
  /** Awaited after each run in the calling thread, for a thread that has a screen or a cancel button to look after. */
  readonly pause?: () => Promise<void>;
  /** Runs done and runs known to come; the second grows while the search goes on. */
  readonly onProgress?: (done: number, known: number) => void;
  readonly cancel?: CancelSignal;
}

export interface SearchEnd {
  readonly status: "finished" | "stopped" | "most-candidates";
  readonly tried: readonly Tried[];
  readonly today: Tried;
  readonly set: readonly Tried[];
  readonly cuts: ReadonlyMap<CandidateCut, number>;
  /** Draws under which today's programme could be run. */
  readonly draws: readonly number[];
}

/** Water of a candidate may be so far from what it should bring. The same-water badge's own measure. */
const sameWaterFraction = 0.01;
const coarsePulses = [1, 2, 4, 8];
const coarseGaps = 3;
const coarseStartSteps = 3;

/**
 * Coarse grid, grid about its best, then step by step: ends when every programme one step in one decision away from a member of
 * the trade-off set was run and changed nothing.
 *
 * @throws RangeError if today's programme cannot be run.
 * @example (await adviceSearch(adviceCase({ scenario }))).set.length
 */
export async function adviceSearch(ready: AdviceCase, options: AdviseOptions = {}): Promise<SearchEnd> {
  const { pause, onProgress, cancel = { aborted: false } } = options;
  const starts = adviceStarts(ready);
  const executorOf = options.executorOf ?? ((batch: AdviceBatch) => oneThread(adviceRun(batch, starts), pause));
  const { today: own, ladders, mostCandidates } = ready;
  const cuts = new Map<CandidateCut, number>();
  const tried = new Map<string, Tried>();
  const seen = new Set<string>();
  let draws = Array.from({ length: drawsOf(ready) }, (_, d) => d);
  let done = 0;
  let known = 0;

  const cut = (why: CandidateCut): void => {
    cuts.set(why, (cuts.get(why) ?? 0) + 1);
  };

  /** Runs points over all draws; by point, its numbers by draw, where there are some. */
  async function run(points: readonly AdvicePoint[]): Promise<(Float64Array | string)[][] | undefined> {
    const all = drawsOf(ready);
    const out = points.map((): (Float64Array | string)[] => []);
    known += points.length * all;
    let delivered = 0;
    await executorOf({ ready, points })({
      ...{ from: 0, to: points.length * all, cancel },
      deliver: (outcome) => {
        const { member } = outcome;
        out[member % points.length][Math.floor(member / points.length)] =
          "failure" in outcome ? outcome.failure : outcome.values;
        delivered++;
        onProgress?.(++done, known);
      },
    });
    return delivered < points.length * all ? undefined : out;
  }

  const [ofToday] = (await run([{ programme: ready.scenario.programme, lines: 0 }])) ?? [[]];
  draws = draws.filter((d) => ofToday[d] instanceof Float64Array);
  if (draws.length === 0)
    throw new RangeError(`advise requires a programme that can be run: ${ofToday[0] ?? "stopped"}`);
  const todayKey = ready.todayIsChoice ? choiceKey(own) : "today";
  const today: Tried = { choice: own, numbers: draws.map((d) => ofToday[d] as Float64Array) };
  tried.set(todayKey, today);
  seen.add(todayKey);

  /** Tries what was not tried yet. False: cancelled, or too many. */
  async function attempt(choices: readonly AdviceChoice[]): Promise<"done" | "stopped" | "most-candidates"> {
    const batch: { readonly choice: AdviceChoice; readonly point: AdvicePoint }[] = [];
    let left = mostCandidates - tried.size;
    for (const choice of choices) {
      const key = choiceKey(choice);
      if (seen.has(key)) continue;
      const point = { programme: programmeOf(choice, ready.todayLPerDay), lines: choice.lines };
      const broken = limitBroken(point.programme, choice.lines, ready);
      if (broken === undefined && left-- <= 0) break;
      seen.add(key);
      if (broken === undefined) batch.push({ choice, point });
      else cut(broken);
    }
    if (batch.length > 0) {
      const out = await run(batch.map(({ point }) => point));
      if (out === undefined) return "stopped";
      out.forEach((byDraw, i) => {
        keep(batch[i].choice, byDraw);
      });
    }
    return left < 0 ? "most-candidates" : "done";
  }

  function keep(choice: AdviceChoice, byDraw: readonly (Float64Array | string)[]): void {
    const numbers = draws.map((d) => byDraw[d]).filter((one) => one instanceof Float64Array);
    if (numbers.length < draws.length) {
      cut("failed");
      return;
    }
    const should = ready.todayLPerDay * choice.waterFraction * ready.days;
    if (numbers.some((one) => Math.abs(one[adviceNumbers.valveL] - should) > sameWaterFraction * should)) {
      cut("water-differs");
      return;
    }
    tried.set(choiceKey(choice), { choice, numbers });
  }

  const ended = (status: SearchEnd["status"]): SearchEnd => {
    const all = [...tried.values()];
    return { status, tried: all, today, set: tradeOffSet(all, today), cuts, draws };
  };

  const members = (): AdviceChoice[] => tradeOffSet([...tried.values()], today).map(({ choice }) => choice);
  const stages: (() => AdviceChoice[])[] = [
    () => coarseGrid(ready),
    () =>
      members().flatMap((choice) =>
        everyNth(ladders.startH, coarseStartSteps).map((startH) => ({ ...choice, startH })),
      ),
    () =>
      members().flatMap((choice) =>
        choice.pulses === 1 ? [] : ladders.gapMinutes.map((gapMinutes) => ({ ...choice, gapMinutes })),
      ),
  ];
  for (const stage of stages) {
    const how = await attempt(stage());
    if (how !== "done") return ended(how);
  }
  for (;;) {
    const before = seen.size;
    const how = await attempt(
      [...(ready.todayIsChoice ? [own] : []), ...members()].flatMap((choice) => neighboursOf(choice, ladders, own)),
    );
    if (how !== "done") return ended(how);
    if (seen.size === before) return ended("finished");
  }
}

/** Lines, water, intervals, pulses and gaps at today's start. */
function coarseGrid({ ladders, today }: AdviceCase): AdviceChoice[] {
  const { lines, waterFraction, everyDays, pulses, gapMinutes } = ladders;
  const some = [...new Set([...coarsePulses, today.pulses])].filter((count) => pulses.includes(count));
  return lines.flatMap((line) =>
    everyNth(waterFraction, coarseGaps).flatMap((water) =>
      everyDays.flatMap((every) =>
        some.flatMap((count) => {
          const choice = withPulses({ ...today, lines: line, waterFraction: water, everyDays: every }, count, today);
          if (count === 1) return [choice];
          return [choice, ...everyNth(gapMinutes, coarseGaps).map((gap) => ({ ...choice, gapMinutes: gap }))];
        }),
      ),
    ),
  );
}

const everyNth = (ladder: readonly number[], step: number): number[] => ladder.filter((_, i) => i % step === 0);
