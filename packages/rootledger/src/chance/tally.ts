import type { EnsembleLayout } from "./ensemble-plan.js";
import type { MemberOutcome } from "./executor.js";
import { createSketch, type PlainSketch, type Sketch } from "./sketch.js";

/** Failed members kept with their reason, the first by number; the others are counted. Our choice. */
const mostFailuresKept = 100;

/** A member without numbers and why. */
export interface MemberFailure {
  readonly member: number;
  readonly reason: string;
}

/** One paired difference as plain data: how it is spread, how its floor is, and on which side of that floor the draws are. */
export interface PlainPair {
  readonly difference: PlainSketch;
  readonly floor: PlainSketch;
  readonly rises: number;
  readonly falls: number;
}

/** What a part of an ensemble found, as plain data; parts of one plan can be merged in any order. */
export interface PlainTally {
  readonly finished: number;
  readonly failed: number;
  readonly failures: readonly MemberFailure[];
  readonly values: readonly PlainSketch[];
  readonly pairs: readonly PlainPair[];
  /** In how many members each badge held. */
  readonly badges: readonly number[];
}

/** Sums of members in memory that does not grow with them. */
export interface Tally {
  /** @throws RangeError if the member's numbers are not those of the layout. */
  readonly add: (outcome: MemberOutcome) => void;
  /** @throws RangeError if the other tally is not of the layout. */
  readonly merge: (other: PlainTally) => void;
  /** The tally as plain data. */
  readonly plain: () => PlainTally;
}

interface Pair {
  readonly difference: Sketch;
  readonly floor: Sketch;
  rises: number;
  falls: number;
}

/**
 * Sums up members as they come. Everything in it is a count, an end or a sketch, so that what it says does not depend on the
 * order of the members or on how they were shared out.
 *
 * @example createTally(layoutOf(plan)).plain().finished // 0
 */
export function createTally(layout: EnsembleLayout): Tally {
  const valueCount = layout.arms.length * layout.measures.length * layout.trees.length;
  const values = Array.from({ length: valueCount }, () => createSketch());
  const pairs = layout.differences.map(
    (): Pair => ({ difference: createSketch(), floor: createSketch(), rises: 0, falls: 0 }),
  );
  const badges = layout.badges.map(() => 0);
  let finished = 0;
  let failed = 0;
  let failures: MemberFailure[] = [];

  const keepFailures = (more: readonly MemberFailure[]): void => {
    failures = [...failures, ...more].sort((a, b) => a.member - b.member).slice(0, mostFailuresKept);
  };

  function add(outcome: MemberOutcome): void {
    if ("failure" in outcome) {
      failed++;
      keepFailures([{ member: outcome.member, reason: outcome.failure }]);
      return;
    }
    const numbers = outcome.values;
    if (numbers.length !== layout.size) {
      throw new RangeError(`a tally requires ${layout.size} numbers of a member: got ${numbers.length}`);
    }
    finished++;
    let at = 0;
    for (const sketch of values) sketch.add(numbers[at++]);
    for (const pair of pairs) {
      const difference = numbers[at++];
      const floor = numbers[at++];
      pair.difference.add(difference);
      pair.floor.add(floor);
      if (difference > floor) pair.rises++;
      else if (difference < -floor) pair.falls++;
    }
    for (let b = 0; b < badges.length; b++) badges[b] += numbers[at++];
  }

  function merge(other: PlainTally): void {
    if (
      other.values.length !== values.length ||
      other.pairs.length !== pairs.length ||
      other.badges.length !== badges.length
    ) {
      throw new RangeError("merge requires a tally of the same layout: its sizes differ");
    }
    finished += other.finished;
    failed += other.failed;
    keepFailures(other.failures);
    other.values.forEach((sketch, i) => {
      values[i].merge(sketch);
    });
    other.pairs.forEach((from, i) => {
      pairs[i].difference.merge(from.difference);
      pairs[i].floor.merge(from.floor);
      pairs[i].rises += from.rises;
      pairs[i].falls += from.falls;
    });
    other.badges.forEach((count, i) => {
      badges[i] += count;
    });
  }

  const plain = (): PlainTally => ({
    finished,
    failed,
    failures,
    values: values.map((sketch) => sketch.plain()),
    pairs: pairs.map(({ difference, floor, rises, falls }) => ({
      ...{ difference: difference.plain(), floor: floor.plain(), rises, falls },
    })),
    badges: badges.slice(),
  });
  return { add, merge, plain };
}
