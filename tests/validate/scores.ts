import { isSeen } from "./blocks.js";
import { meanTheta } from "./mean-depth.js";
import type { StationRecord } from "./station-record.js";

/** Errors on the unseen days (or the seen ones), by depth and for the 0-50 cm mean, m3/m3; Nash-Sutcliffe has no unit. */
export interface Scores {
  readonly rmse: readonly number[];
  readonly bias: readonly number[];
  readonly nse: readonly number[];
  readonly mean0to50Cm: { readonly rmse: number; readonly bias: number; readonly nse: number };
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
  const mean = errorsOf(meanTheta(depthsCm, theta), meanTheta(depthsCm, predicted), allScored);
  return {
    rmse: byDepth.map(({ rmse }) => rmse),
    bias: byDepth.map(({ bias }) => bias),
    nse: byDepth.map(({ nse }) => nse),
    mean0to50Cm: { rmse: mean.rmse, bias: mean.bias, nse: mean.nse },
    days: mean.days,
  };
}

interface Errors {
  readonly rmse: number;
  readonly bias: number;
  readonly nse: number;
  readonly days: number;
}

/** Source of the efficiency: Nash & Sutcliffe (1970), J. Hydrology 10:282-290, 1 - sum of squares / variance about the mean. */
function errorsOf(read: Float64Array, predicted: Float64Array, counts: (day: number) => boolean): Errors {
  const days = Array.from(read.keys()).filter((d) => counts(d) && !Number.isNaN(read[d]));
  const mean = (of: (day: number) => number): number => days.reduce((sum, d) => sum + of(d), 0) / days.length;
  const readMean = mean((d) => read[d]);
  const square = mean((d) => (predicted[d] - read[d]) ** 2);
  return {
    rmse: Math.sqrt(square),
    bias: mean((d) => predicted[d] - read[d]),
    nse: 1 - square / mean((d) => (read[d] - readMean) ** 2),
    days: days.length,
  };
}
