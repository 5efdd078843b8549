import { describe, expect, it } from "vitest";
import { type EngineErrors, engineErrors } from "../../packages/rootledger/src/compare/engine-errors.js";
import { type BothEnginesCase, bothEnginesCases, days, runBucket } from "./both-engines-case.js";
import { airlessChanges, changeKind, groupOf, kept } from "./both-engines-errors.js";

const ours = new Map(bothEnginesCases.map((c) => [c.id, runBucket(c)]));
const theirs = new Map(kept.map((k) => [k.id, k.richards]));
const hours = days * 24;
const appliedL = 133 * days;

/** Measures that rank programmes: whose error bounds them, and what that error is a fraction of. */
const ranking: readonly (readonly [id: string, error: keyof EngineErrors, over: number])[] = [
  ["transpiration-ratio", "uptake", 1],
  ["thirsty", "thirstyTime", hours],
  ["airless", "airlessTime", hours],
  ["thirsty-severity", "thirstySeverity", hours],
  ["airless-severity", "airlessSeverity", hours],
  ["below-roots", "drainage", appliedL],
  ["evaporation", "evaporation", appliedL],
  ["runoff", "runoff", appliedL],
  ["window-low-point", "lowPoint", 1],
];

/** Every two programmes on one soil at one flow, once. */
const pairs = bothEnginesCases.flatMap((from) =>
  bothEnginesCases
    .filter((to) => from.soil.name === to.soil.name && from.flowLPerH === to.flowLPerH)
    .map((to) => ({ from, to, kind: changeKind(from.programme, to.programme) })),
);

function change(runs: ReadonlyMap<string, Readonly<Record<string, number>>>, a: BothEnginesCase, b: BothEnginesCase) {
  const [from, to] = [runs.get(a.id), runs.get(b.id)];
  if (!from || !to) throw new Error(`no run of ${a.id} or ${b.id}`);
  return (id: string): number => to[id] - from[id];
}

describe("what a change of programme does, by both engines", () => {
  it.each(ranking)("%s ranks as Richards does wherever Richards' difference exceeds the error", (id, error, over) => {
    let compared = 0;
    for (const { from, to, kind } of pairs) {
      if (kind === undefined) continue;
      const slow = change(theirs, from, to)(id);
      if (Math.abs(slow) <= engineErrors[groupOf(from.soil.horizons)][kind][error] * over) continue;
      compared++;
      expect(Math.sign(change(ours, from, to)(id)), `${from.id} to ${to.programme}`).toBe(Math.sign(slow));
    }
    console.log(`${id}: ${compared} changes beyond the error, all ranked alike`);
  });

  /**
   * Own aim: the change in airless root-hours within 25 % of Richards' or 2 h a week. Four of 54 changes miss it, by up to 3.7 h:
   * a cell turns airless as a whole a little before or after its part does on finer cells. The verdicts' floors contain
   * these errors.
   */
  const beyond = new Set([
    "clay, weekly, 1.6 L/h to daily",
    "clay, daily, 1.6 L/h to four pulses",
    "clay loam over sand, weekly, 1.6 L/h to four pulses",
    "clay loam, daily, 0.8 L/h to four pulses",
  ]);

  it("changes airless root-hours as Richards does, within 25 % or 2 h a week, but for the changes listed", () => {
    const missed = airlessChanges().filter((change) => !change.pass);
    for (const { name, ours: fast, reference } of missed) {
      console.log(`${name}: Richards ${reference.toFixed(1)}, bucket ${fast.toFixed(1)} h a week`);
    }
    expect(new Set(missed.map(({ name }) => name))).toEqual(beyond);
  });
});
