/** A season of four stages: initial, development, middle and late, FAO-56 (Allen et al. 1998) figure 34. */
export interface KcCurve {
  readonly lengthsDays: readonly [number, number, number, number];
  readonly kcInitial: number;
  readonly kcMiddle: number;
  readonly kcEnd: number;
}

/**
 * Days after planting at which the four stages begin, and at which the last one ends. Source: FAO-56 Annex 8, box 8.1.
 *
 * @throws RangeError if a length is negative or not finite.
 * @example stageStartsDays([25, 25, 30, 20]) // [0, 25, 50, 80, 100]
 */
export function stageStartsDays(lengthsDays: readonly [number, number, number, number]): readonly number[] {
  const starts = [0];
  for (const length of lengthsDays) {
    if (!(length >= 0 && length < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`stageStartsDays requires lengths of 0 days or more: got ${length}`);
    }
    starts.push(starts[starts.length - 1] + length);
  }
  return starts;
}

/**
 * Kc on a day of the season, counted from planting: constant in the initial and middle stages, linear in the others.
 * Source: FAO-56 eq. 66. The same line serves Kcb.
 *
 * @throws RangeError outside the season.
 * @example kcOnDay({ lengthsDays: [25, 25, 30, 20], kcInitial: 0.15, kcMiddle: 1.19, kcEnd: 0.35 }, 40) // 0.774
 */
export function kcOnDay(curve: KcCurve, day: number): number {
  const starts = stageStartsDays(curve.lengthsDays);
  if (!(day >= 0 && day <= starts[4])) {
    throw new RangeError(`kcOnDay requires a day of the season, 0 to ${starts[4]}: got ${day}`);
  }
  const { kcInitial, kcMiddle, kcEnd } = curve;
  if (day <= starts[1]) return kcInitial;
  if (day < starts[2]) return kcInitial + ((kcMiddle - kcInitial) * (day - starts[1])) / (starts[2] - starts[1]);
  if (day <= starts[3]) return kcMiddle;
  return kcMiddle + ((kcEnd - kcMiddle) * (day - starts[3])) / (starts[4] - starts[3]);
}

/**
 * Mean of the curve between two moments of the season, as for a decade or a month. Source: FAO-56 ch. 6, text to figure 36.
 *
 * @throws RangeError if the span is empty or leaves the season.
 * @example meanKc({ lengthsDays: [25, 25, 30, 20], kcInitial: 0.15, kcMiddle: 1.19, kcEnd: 0.35 }, 20, 30) // 0.202
 */
export function meanKc(curve: KcCurve, fromDay: number, toDay: number): number {
  if (!(toDay > fromDay)) throw new RangeError(`meanKc requires fromDay before toDay: got ${fromDay} and ${toDay}`);
  const bends = stageStartsDays(curve.lengthsDays).filter((day) => day > fromDay && day < toDay);
  const knots = [fromDay, ...bends, toDay];
  let area = 0;
  for (let k = 1; k < knots.length; k++) {
    area += 0.5 * (kcOnDay(curve, knots[k - 1]) + kcOnDay(curve, knots[k])) * (knots[k] - knots[k - 1]);
  }
  return area / (toDay - fromDay);
}
