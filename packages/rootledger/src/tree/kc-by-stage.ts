import { dayNumber } from "../numeric/day-number.js";
import { type Phenology, type Stage, stageSpans } from "./stages.js";

/** A stage and its coefficient, linear over the stage from `kcFrom` to `kcTo`; equal for a constant one. */
export interface KcStage extends Stage {
  readonly kcFrom: number;
  readonly kcTo: number;
}

/**
 * Kc (or Kcb) of every day from stages: linear within a stage, so that FAO-56's four stages give the curve of its eq. 66
 * (Allen et al. 1998), and a calendar of months gives steps. The last stage of a calendar without return keeps `kcTo`.
 *
 * @throws RangeError where `stageSpans` does, or if the first days of the season lie before every stage.
 * @example kcByStage("2025-07-01", 1, [{ name: "mid", starts: { monthDay: "06-01" }, kcFrom: 0.85, kcTo: 0.85 }])[0] // 0.85
 */
export function kcByStage(
  startDate: string,
  days: number,
  stages: readonly KcStage[],
  phenology: Phenology = {},
): Float64Array {
  const first = dayNumber(startDate);
  const spans = stageSpans(startDate, days, stages, phenology);
  if (!(spans.length > 0 && spans[0].fromDay <= first)) {
    throw new RangeError(`kcByStage requires a stage that holds on the first day, ${startDate}: got none`);
  }
  const kc = new Float64Array(days);
  for (const { stage, fromDay, toDay } of spans) {
    const { kcFrom, kcTo } = stages[stage];
    const length = toDay - fromDay;
    const slope = Number.isFinite(length) ? (kcTo - kcFrom) / length : 0;
    const start = Number.isFinite(length) ? kcFrom : kcTo;
    for (let d = Math.max(0, fromDay - first); d < days && first + d < toDay; d++) {
      kc[d] = start + slope * (first + d - fromDay);
    }
  }
  return kc;
}
