import { leastSquares } from "../../packages/rootledger/fit/least-squares.js";
import { isSeen } from "./blocks.js";
import type { StationRecord } from "./station-record.js";

const yearDays = 365.25;

/** Baseline that knows the season only: a mean and one wave a year at each depth, fitted to the seen days. */
export function harmonicPrediction(record: StationRecord, scored: readonly Uint8Array[]): Float64Array[] {
  const wave = (day: number): number[] => {
    const angle = (2 * Math.PI * day) / yearDays;
    return [1, Math.cos(angle), Math.sin(angle)];
  };
  return record.theta.map((read, k) => {
    const seen = Array.from(read.keys()).filter((d) => isSeen(d) && scored[k][d] === 1);
    const parts = leastSquares(
      seen.map(wave),
      seen.map((d) => read[d]),
    );
    return read.map((_, d) => wave(d).reduce((sum, x, i) => sum + x * parts[i], 0));
  });
}
