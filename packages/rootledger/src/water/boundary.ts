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

function at(column: Float64Array, headCm: number): number {
  if (headCm >= -1e-4) return column[0];
  const point = (Math.log(-headCm) - logWettest) * pointsPerLog;
  if (point >= points - 1) return column[points - 1];
  const i = point | 0;
  return column[i] + (point - i) * (column[i + 1] - column[i]);
}

/** Mean conductivity of one soil between two heads: the difference of potentials over the difference of heads. */
function meanConductivity(table: HeadTable, headA: number, headB: number): number {
  const apart = headA - headB;
  if (apart < 1e-3 && apart > -1e-3) return at(table.conductivityCmPerH, 0.5 * (headA + headB));
  return (at(table.potentialCm2PerH, headA) - at(table.potentialCm2PerH, headB)) / apart;
}

/**
 * Mean conductivity across a face between two soils, cm/h: each half weighted by its resistance, each soil's mean taken
 * between the same two heads. Gives the capillary barrier of fine soil over coarse without a rule for it.
 *
 * @example faceConductivity(upper, lower, 5, 5, -40, -90)
 */
export function faceConductivity(
  upper: HeadTable,
  lower: HeadTable,
  upperHalfCm: number,
  lowerHalfCm: number,
  headUpperCm: number,
  headLowerCm: number,
): number {
  const kUpper = meanConductivity(upper, headUpperCm, headLowerCm);
  const kLower = meanConductivity(lower, headUpperCm, headLowerCm);
  if (!(kUpper > 0) || !(kLower > 0)) return 0;
  return (upperHalfCm + lowerHalfCm) / (upperHalfCm / kUpper + lowerHalfCm / kLower);
}

/** One head table per material of the ground. @example headTables(ground)[0] */
export const headTables = (ground: Ground): readonly HeadTable[] => ground.tables.map(tabulateByHead);
