import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { type BoundedFit, boundedFit, dampedLeastSquares } from "rootledger/calibrate";
import { isSeen } from "./blocks.js";
import { grassColumn } from "./grass-column.js";
import { predictSeen } from "./predict.js";
import { plotOf, soilUnknowns } from "./soil-unknowns.js";
import type { StationRecord } from "./station-record.js";

/** One reading may miss by this, m3/m3: what probes of this kind are stated to be good for in the field; from memory. */
const sigma = 0.02;
/** Readings of neighbouring days say nearly the same: ten count as one independent reading; our choice, no source. */
const daysPerReading = 10;

/** Fits the column to the seen days; the unseen ones play no part, not even in what is expected. */
export function fitSoil(record: StationRecord, scored: readonly Uint8Array[], iterations: number): BoundedFit {
  const places = record.theta.flatMap((column, k) =>
    Array.from(column.keys())
      .filter((d) => isSeen(d) && scored[k][d] === 1)
      .map((d) => ({ k, d })),
  );
  return boundedFit(
    soilUnknowns(record, scored),
    places.map(({ k, d }) => record.theta[k][d]),
    sigma * Math.sqrt(daysPerReading),
    { leastSquares: dampedLeastSquares(levenbergMarquardt), iterations },
    (values) => {
      const ours = predictSeen(record, grassColumn(record, plotOf(record, values)));
      return places.map(({ k, d }) => ours[k][d]);
    },
  );
}
