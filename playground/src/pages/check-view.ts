import type { OwnWorkState } from "../worker/own-worker.js";
import type { CheckAnswer } from "../worker/protocol.js";

/** What a check was asked for, to tell later whether it still speaks of what is on the page. */
export interface CheckSubject {
  /** Equal for two requests about the same programmes, soils and start. */
  readonly key: string;
  readonly firstDay: number;
  readonly days: number;
}

/** The check as the page shows it. */
export interface CheckView {
  readonly state: OwnWorkState;
  readonly answer: CheckAnswer | undefined;
  readonly subject: CheckSubject | undefined;
  /** The answer is about programmes or soils from before a change. */
  readonly stale: boolean;
}

/** A measure that one programme change moves, by both engines. */
export interface CheckedChange {
  readonly from: string;
  readonly to: string;
  readonly measureId: string;
  readonly unit: string;
  readonly fast: number;
  readonly physics: number;
  readonly floor: number;
  readonly within: boolean;
}

/** Measures that are held against physics; roots first, then water. */
export const checkedMeasures = ["thirsty", "airless", "transpiration", "below-roots", "evaporation"];

/** Changes between neighbouring programmes on one soil, where both engines have them. */
export function checkedChanges({ fast, differences }: CheckAnswer, soil: string): CheckedChange[] {
  const names = [...new Set(fast.arms.map((arm) => arm.programme))];
  return fast.differences
    .filter((d) => d.soil === soil && names.indexOf(d.to) === names.indexOf(d.from) + 1)
    .filter((d) => checkedMeasures.includes(d.measureId))
    .flatMap((d) => {
      const other = differences.find(
        (p) => p.soil === soil && p.from === d.from && p.to === d.to && p.measureId === d.measureId,
      );
      if (!other) return [];
      const { from, to, measureId, unit, floor } = d;
      const within = Math.abs(other.difference - d.difference) <= floor;
      return [{ from, to, measureId, unit, fast: d.difference, physics: other.difference, floor, within }];
    });
}
