import { pairedVerdict } from "../compare/paired-verdict.js";
import { type AdviceChoice, changesBetween } from "./advice-choice.js";
import { adviceNumbers } from "./advice-run.js";

/** Measures by which programmes are judged. */
export type AdviceMeasureId = "thirsty" | "airless" | "below-roots" | "pump-starts";

/** The four measures that advice is weighed by, none against another. `at`: place among a member's numbers. */
export const adviceMeasures: readonly {
  readonly id: AdviceMeasureId;
  readonly unit: "root-h" | "L" | "count";
  readonly at: number;
}[] = [
  { id: "thirsty", unit: "root-h", at: adviceNumbers.thirsty },
  { id: "airless", unit: "root-h", at: adviceNumbers.airless },
  { id: "below-roots", unit: "L", at: adviceNumbers.belowRootsL },
  { id: "pump-starts", unit: "count", at: adviceNumbers.starts },
];

/** A candidate that was run over every draw. */
export interface Tried {
  readonly choice: AdviceChoice;
  /** By draw, in the order of `adviceNumbers`. */
  readonly numbers: readonly Float64Array[];
}

/** One measure of a second programme less that of a first, over the draws. */
export interface AdviceDifference {
  /** By which the set is made: beyond the floor one is better. */
  readonly mean: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Below this nothing is claimed. Pump starts are counted, not simulated: theirs is 0. */
  readonly floor: number;
  /** Clear if the median is beyond the floor and the draws agree; without agreement nothing is claimed, nor that both are the same. */
  readonly verdict: "rises" | "falls" | "no clear difference";
}

/** Share of the draws left out at each end: of fewer than twenty, none. */
const tail = 0.05;

/**
 * What one measure of a second candidate is against a first: paired draw by draw, with the first one's floor for what differs
 * between them, pulses and gaps alone or more.
 *
 * @example differenceOf(today, other, 1).verdict
 */
export function differenceOf(from: Tried, to: Tried, measure: number): AdviceDifference {
  const { at } = adviceMeasures[measure];
  const onlyPulses = changesBetween(from.choice, to.choice).every((key) => key === "pulses" || key === "gapMinutes");
  const floorAt = (onlyPulses ? adviceNumbers.pulseFloors : adviceNumbers.otherFloors) + measure;
  const floor = at === adviceNumbers.starts ? 0 : bandOf(from.numbers.map((numbers) => numbers[floorAt])).median;
  const differences = to.numbers.map((numbers, d) => numbers[at] - from.numbers[d][at]);
  const band = { ...bandOf(differences), floor };
  const mean = differences.reduce((sum, one) => sum + one, 0) / differences.length;
  return { mean, ...band, verdict: pairedVerdict(band) };
}

/** Middle of some values and their ends, a twentieth at each end left out. @example bandOf([3, 1, 2]) // { low: 1, median: 2, high: 3 } */
export function bandOf(values: readonly number[]): {
  readonly low: number;
  readonly median: number;
  readonly high: number;
} {
  const sorted = Float64Array.from(values).sort();
  const last = sorted.length - 1;
  const out = Math.floor(tail * sorted.length);
  return {
    low: sorted[out],
    median: (sorted[Math.floor(last / 2)] + sorted[Math.ceil(last / 2)]) / 2,
    high: sorted[last - out],
  };
}

/** Mean of each measure over the draws. @example meansOf(today)[0] */
const meansOf = ({ numbers }: Tried): number[] =>
  adviceMeasures.map(({ at }) => numbers.reduce((sum, one) => sum + one[at], 0) / numbers.length);

/** Whether a candidate is better than another on some measure, on the mean and beyond the floor. @example betterSomewhere(other, today) */
const betterSomewhere = (one: Tried, than: Tried): boolean =>
  adviceMeasures.some((_, m) => {
    const { mean, floor } = differenceOf(than, one, m);
    return mean < -floor;
  });

/** Whether a candidate is worse than another on no measure, on the mean and beyond the floor. @example worseNowhere(other, today) */
export const worseNowhere = (one: Tried, than: Tried): boolean =>
  adviceMeasures.every((_, m) => {
    const { mean, floor } = differenceOf(than, one, m);
    return mean <= floor;
  });

/** Whether a candidate is clearly better than another on some measure: the draws agree. @example clearSomewhere(other, today) */
export const clearSomewhere = (one: Tried, than: Tried): boolean =>
  adviceMeasures.some((_, m) => differenceOf(than, one, m).verdict === "falls");

/** Whether two candidates are the same for the roots: thirst, air and water below them within their floors. @example alikeForRoots(other, today) */
export const alikeForRoots = (one: Tried, today: Tried): boolean =>
  adviceMeasures.every(({ id }, m) => {
    const { mean, floor, verdict } = differenceOf(today, one, m);
    return id === "pump-starts" || (Math.abs(mean) <= floor && verdict === "no clear difference");
  });

/** Candidates that no other is at least as good as on every mean and better on one. @example undominated([today]) // [today] */
function undominated(tried: readonly Tried[]): Tried[] {
  const means = tried.map(meansOf);
  return tried.filter(
    (_, i) =>
      !means.some(
        (other, j) =>
          other.every((value, m) => value <= means[i][m]) &&
          (other.some((value, m) => value < means[i][m]) ||
            (j < i && other.every((value, m) => value === means[i][m]))),
      ),
  );
}

/**
 * The trade-off set: few candidates such that none that was tried is better than all of them on some measure, on the mean and beyond
 * the floor. Those nearest to today's come first; today's is in it unless something is clearly better somewhere and worse nowhere.
 *
 * @example tradeOffSet(tried, today).length
 */
export function tradeOffSet(tried: readonly Tried[], today: Tried): Tried[] {
  const distance = ({ choice }: Tried): number => changesBetween(today.choice, choice).length;
  const keepToday = !tried.some((one) => one !== today && clearSomewhere(one, today) && worseNowhere(one, today));
  const ordered = undominated(tried)
    .filter((one) => one !== today)
    .map((one, place) => ({ one, place }))
    .sort((a, b) => distance(a.one) - distance(b.one) || a.place - b.place);
  let set: Tried[] = keepToday ? [today] : [];
  for (const { one } of ordered) {
    if (!set.every((member) => betterSomewhere(one, member))) continue;
    set = [...set.filter((member) => member === today || !worseNowhere(one, member)), one];
  }
  return set;
}
