import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { boundedFit, dampedLeastSquares, type ExpectedUnknown } from "rootledger/calibrate";
import { stressCoefficient, totalAvailableWaterMm } from "rootledger/tree";
import { leastSquares } from "../../packages/rootledger/fit/least-squares.js";
import { isSeen } from "./blocks.js";
import { meanTheta, measuredCm } from "./mean-depth.js";
import { predictSeen, predictUnseen } from "./predict.js";
import type { StationRecord } from "./station-record.js";

const unknowns: readonly ExpectedUnknown[] = [
  { name: "fieldCapacity", expected: 0.3, spread: 0.08 },
  { name: "wiltingPoint", expected: 0.12, spread: 0.06 },
  { name: "kc", expected: 0.8, spread: 0.3 },
];
/** p of grazed pasture and turf lies at 0.4 to 0.6 (FAO-56 Table 22, from memory). */
const depletionFraction = 0.5;

/**
 * Baseline that knows rain and ET0 only: the plain root-zone balance of FAO-56 (Allen et al. 1998, eq. 82, 84, 85 with a single Kc) over the top 50 cm,
 * its three numbers fitted to the seen days, and at each depth a straight line from its water content to the probe's. It starts each block from
 * the readings, as the column does.
 */
export function oneBucketPrediction(
  record: StationRecord,
  scored: readonly Uint8Array[],
  iterations = 20,
): Float64Array[] {
  const { depthsCm, days } = record;
  const read = meanTheta(depthsCm, record.theta);
  const mean: StationRecord = { ...record, depthsCm: [20], theta: [read] };
  const seen = Array.from({ length: days }, (_, d) => d).filter(
    (d) => isSeen(d) && scored.every((column) => column[d] === 1) && !Number.isNaN(read[d]),
  );
  const bucketOf = (values: Readonly<Record<string, number>>) => oneBucket(mean, measuredCm(depthsCm) / 100, values);
  const found = boundedFit(
    unknowns,
    seen.map((d) => read[d]),
    0.02 * Math.sqrt(10),
    { leastSquares: dampedLeastSquares(levenbergMarquardt), iterations },
    (values) => {
      const [ours] = predictSeen(mean, bucketOf(values));
      return seen.map((d) => ours[d]);
    },
  );
  const bucket = bucketOf(found.values);
  const [fitted] = predictSeen(mean, bucket);
  const [predicted] = predictUnseen(mean, bucket);
  return record.theta.map((column, k) => {
    const used = seen.filter((d) => scored[k][d] === 1);
    const [base, slope] = leastSquares(
      used.map((d) => [1, fitted[d]]),
      used.map((d) => column[d]),
    );
    return predicted.map((theta) => base + slope * theta);
  });
}

function oneBucket(record: StationRecord, depthM: number, values: Readonly<Record<string, number>>) {
  const { rainMm, et0Mm } = record;
  const fieldCapacity = values.fieldCapacity;
  const wiltingPoint = values.wiltingPoint < fieldCapacity - 0.03 ? values.wiltingPoint : fieldCapacity - 0.03;
  const totalMm = totalAvailableWaterMm(fieldCapacity, wiltingPoint, depthM);
  let depletionMm = 0;
  return {
    start([theta]: readonly number[]) {
      depletionMm = totalAvailableWaterMm(fieldCapacity, theta, depthM);
    },
    run([out]: readonly Float64Array[], from: number, to: number) {
      for (let d = from; d < to; d++) {
        const lessRain = depletionMm - rainMm[d];
        const start = lessRain > 0 ? lessRain : 0;
        const after = start + stressCoefficient(start, totalMm, depletionFraction) * values.kc * et0Mm[d];
        depletionMm = after;
        out[d] = fieldCapacity - depletionMm / (1000 * depthM);
      }
    },
  };
}
