import type { SoilTable } from "../ground/table.js";
import type { Ground } from "./ground.js";

/**
 * Matric flux potential by head, for faces between two soils: heads are continuous there, potentials are not.
 * Even in ln|h| from 1e-4 to 2e5 cm; wetter than that K is kSat, drier it is zero.
 */
export interface HeadTable {
  readonly potentialCm2PerH: Float64Array;
  readonly conductivityCmPerH: Float64Array;
}

const points = 1024;
const logWettest = Math.log(1e-4);
const logDriest = Math.log(2e5);
const pointsPerLog = (points - 1) / (logDriest - logWettest);

/** @example tabulateByHead(tabulateSoil(curve)).potentialCm2PerH.length // 1024 */
function tabulateByHead(table: SoilTable): HeadTable {
  const potentialCm2PerH = new Float64Array(points);
  const conductivityCmPerH = new Float64Array(points);
  const finePerPoint = 8;
  let potential = 0;
  let previousHead = -Math.exp(logDriest);
  let previousK = table.curve.conductivityAt(previousHead);
  conductivityCmPerH[points - 1] = previousK;
  for (let i = points - 2; i >= 0; i--) {
    for (let f = 1; f <= finePerPoint; f++) {
      const headCm = -Math.exp(logWettest + (i + 1 - f / finePerPoint) / pointsPerLog);
      const k = table.curve.conductivityAt(headCm);
      potential += 0.5 * (k + previousK) * (headCm - previousHead);
      previousHead = headCm;
      previousK = k;
    }
    potentialCm2PerH[i] = potential;
    conductivityCmPerH[i] = previousK;
  }
  return { potentialCm2PerH, conductivityCmPerH };
}

/** Place of a head in the tables, in points and parts of one. */
function pointOf(headCm: number): number {
  if (headCm >= -1e-4) return 0;
  const point = (Math.log(-headCm) - logWettest) * pointsPerLog;
  return point < points - 1 ? point : points - 1;
}

function at(column: Float64Array, point: number): number {
  const i = point < points - 1 ? point | 0 : points - 2;
  return column[i] + (point - i) * (column[i + 1] - column[i]);
}

/**
 * Mean conductivity across a face between two soils, cm/h: each half weighted by its resistance, each soil's mean taken
 * between the same two heads as the difference of potentials over the difference of heads. Gives the capillary barrier of
 * fine soil over coarse without a rule for it. Beside it, exactly, how much mean times head difference changes with the head
 * of either cell.
 *
 * @param out receives the mean, and the change with the upper and with the lower head, all cm/h
 * @example faceConductivity(out, upper, lower, 5, 5, -40, -90)
 */
export function faceConductivity(
  out: Float64Array,
  upper: HeadTable,
  lower: HeadTable,
  upperHalfCm: number,
  lowerHalfCm: number,
  headUpperCm: number,
  headLowerCm: number,
): void {
  const apart = headUpperCm - headLowerCm;
  const even = apart < 1e-3 && apart > -1e-3;
  const pointUpper = pointOf(even ? 0.5 * (headUpperCm + headLowerCm) : headUpperCm);
  const pointLower = even ? pointUpper : pointOf(headLowerCm);
  const atUpperU = at(upper.conductivityCmPerH, pointUpper);
  const atUpperL = at(lower.conductivityCmPerH, pointUpper);
  const atLowerU = at(upper.conductivityCmPerH, pointLower);
  const atLowerL = at(lower.conductivityCmPerH, pointLower);
  const kUpper = even
    ? atUpperU
    : (at(upper.potentialCm2PerH, pointUpper) - at(upper.potentialCm2PerH, pointLower)) / apart;
  const kLower = even
    ? atUpperL
    : (at(lower.potentialCm2PerH, pointUpper) - at(lower.potentialCm2PerH, pointLower)) / apart;
  if (!(kUpper > 0) || !(kLower > 0)) {
    out[0] = 0;
    out[1] = 0;
    out[2] = 0;
    return;
  }
  const length = upperHalfCm + lowerHalfCm;
  const mean = length / (upperHalfCm / kUpper + lowerHalfCm / kLower);
  const partUpper = (mean * mean * upperHalfCm) / (length * kUpper * kUpper);
  const partLower = (mean * mean * lowerHalfCm) / (length * kLower * kLower);
  out[0] = mean;
  out[1] = partUpper * atUpperU + partLower * atUpperL;
  out[2] = partUpper * atLowerU + partLower * atLowerL;
}

/** One head table per material of the ground. @example headTables(ground)[0] */
export const headTables = (ground: Ground): readonly HeadTable[] => ground.tables.map(tabulateByHead);
