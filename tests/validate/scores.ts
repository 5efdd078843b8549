import { type FitScores, fitScores } from "rootledger/calibrate";
import { isSeen } from "./blocks.js";
import { meanTheta } from "./mean-depth.js";
import type { StationRecord } from "./station-record.js";

/** Errors on the unseen days (or the seen ones), by depth and for the 0-50 cm mean, m3/m3; Nash-Sutcliffe and Kling-Gupta have no unit. */
export interface Scores {
  readonly rmse: readonly number[];
  readonly bias: readonly number[];
  readonly nse: readonly number[];
  readonly kge: readonly number[];
  readonly mean0to50Cm: Omit<FitScores, "count">;
  readonly days: number;
}

/** Compares a prediction with what was read; bias is prediction less reading. */
export function scoresOf(
  record: StationRecord,
  scored: readonly Uint8Array[],
  predicted: readonly Float64Array[],
  which: "seen" | "unseen",
): Scores {
  const { depthsCm, theta, days } = record;
  const wanted = Array.from({ length: days }, (_, d) => isSeen(d) === (which === "seen"));
  const byDepth = theta.map((read, k) => errorsOf(read, predicted[k], (d) => wanted[d] && scored[k][d] === 1));
  const allScored = (d: number): boolean => wanted[d] && scored.every((column) => column[d] === 1);
  const { days: scoredDays, ...mean0to50Cm } = errorsOf(
    meanTheta(depthsCm, theta),
    meanTheta(depthsCm, predicted),
    allScored,
  );
  return {
    rmse: byDepth.map(({ rmse }) => rmse),
    bias: byDepth.map(({ bias }) => bias),
    nse: byDepth.map(({ nse }) => nse),
    kge: byDepth.map(({ kge }) => kge),
    mean0to50Cm,
    days: scoredDays,
  };
}

/** Scores on the days that count and have a reading. */
function errorsOf(read: Float64Array, predicted: Float64Array, counts: (day: number) => boolean) {
  const days = Array.from(read.keys()).filter((d) => counts(d) && !Number.isNaN(read[d]));
  const at = (column: Float64Array): number[] => days.map((d) => column[d]);
  const { count, ...scores } = fitScores(at(read), at(predicted));
  return { ...scores, days: count };
}
