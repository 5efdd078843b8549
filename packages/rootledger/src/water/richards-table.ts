import type { SoilCurve } from "../ground/curve.js";

/**
 * One soil's curves by head, even in ln|h|: cubic pieces of theta, conductivity and matric flux potential whose exact
 * derivatives serve as capacity and dK/dh, so that Newton's method sees one consistent soil. Pieces do not overshoot.
 */
export interface HeadCurves {
  readonly curve: SoilCurve;
  /** Twelve numbers a piece: theta, K and potential as c0 + c1 t + c2 t2 + c3 t3, t from 0 to 1 within the piece. */
  readonly pieces: Float64Array;
  readonly thetaSaturated: number;
  readonly kSatCmPerH: number;
  readonly potentialSaturatedCm2PerH: number;
  /** Values at the wet end of the pieces; between it and zero head everything is linear in head. */
  readonly wetTheta: number;
  readonly wetConductivityCmPerH: number;
  readonly wetPotentialCm2PerH: number;
  /** Suction at which half of the mobile water is gone, cm; scales the head in Newton's updates. */
  readonly halfHeadCm: number;
}

export const wettestHeadCm = 1e-3;
export const driestHeadCm = 1e7;
export const piecesPerLog = 64;
export const pieceCount: number = Math.ceil(Math.log(driestHeadCm / wettestHeadCm) * piecesPerLog);
export const logWettest: number = Math.log(wettestHeadCm);

/** Largest slope over secant for which a cubic piece stays monotone: Fritsch & Carlson (1980), SIAM J. Numer. Anal. 17:238-246. */
const steepest = 3;

/**
 * @throws RangeError if the curve is not finite or falls with rising head.
 * @example headCurves(curve).thetaSaturated
 */
export function headCurves(curve: SoilCurve): HeadCurves {
  const points = pieceCount + 1;
  const theta = new Float64Array(points);
  const conductivity = new Float64Array(points);
  const potential = new Float64Array(points);
  for (let k = points - 1; k >= 0; k--) {
    const headCm = headAtPoint(k);
    theta[k] = curve.thetaAt(headCm);
    conductivity[k] = curve.conductivityAt(headCm);
    if (!Number.isFinite(theta[k]) || !Number.isFinite(conductivity[k])) {
      throw new RangeError(`headCurves requires a finite curve: "${curve.name}" is not finite at head ${headCm} cm`);
    }
    if (k === points - 1) continue;
    if (theta[k] < theta[k + 1] - 1e-12 || conductivity[k] < conductivity[k + 1] * (1 - 1e-12)) {
      throw new RangeError(`headCurves requires a rising curve: "${curve.name}" falls near head ${headCm} cm`);
    }
    const middle = curve.conductivityAt(-Math.sqrt(headCm * headAtPoint(k + 1)));
    // Simpson in ln|h|: the integral of K dh is that of K |h| d(ln|h|).
    const across = conductivity[k] * -headCm + 4 * middle * Math.sqrt(headCm * headAtPoint(k + 1));
    potential[k] = potential[k + 1] + (across - conductivity[k + 1] * headAtPoint(k + 1)) / (6 * piecesPerLog);
  }
  const pieces = new Float64Array(pieceCount * 12);
  lay(
    pieces,
    0,
    theta,
    slopes(theta, (k) => slopeByLog(curve.thetaAt, k)),
  );
  lay(
    pieces,
    4,
    conductivity,
    slopes(conductivity, (k) => slopeByLog(curve.conductivityAt, k)),
  );
  lay(
    pieces,
    8,
    potential,
    slopes(potential, (k) => (conductivity[k] * headAtPoint(k)) / piecesPerLog),
  );
  return {
    curve,
    pieces,
    thetaSaturated: curve.thetaSaturated,
    kSatCmPerH: curve.kSatCmPerH,
    potentialSaturatedCm2PerH: potential[0] + 0.5 * (conductivity[0] + curve.kSatCmPerH) * wettestHeadCm,
    wetTheta: theta[0],
    wetConductivityCmPerH: conductivity[0],
    wetPotentialCm2PerH: potential[0],
    halfHeadCm: halfHead(theta, curve),
  };
}

const headAtPoint = (k: number): number => -Math.exp(logWettest + k / piecesPerLog);

/** Change of a curve per piece at a point, by central difference. */
function slopeByLog(at: (headCm: number) => number, k: number): number {
  const reach = 1 / 16;
  return (at(headAtPoint(k + reach)) - at(headAtPoint(k - reach))) / (2 * reach);
}

function slopes(values: Float64Array, wanted: (k: number) => number): Float64Array {
  const out = new Float64Array(values.length);
  for (let k = 0; k < values.length; k++) {
    const wetter = k > 0 ? values[k - 1] - values[k] : Infinity;
    const drier = k < values.length - 1 ? values[k] - values[k + 1] : Infinity;
    const most = -steepest * (wetter < drier ? wetter : drier);
    const slope = wanted(k);
    out[k] = slope < most ? most : slope > 0 ? 0 : slope;
  }
  return out;
}

function lay(pieces: Float64Array, offset: number, values: Float64Array, slope: Float64Array): void {
  for (let k = 0; k < pieceCount; k++) {
    const rise = values[k + 1] - values[k];
    const at = k * 12 + offset;
    pieces[at] = values[k];
    pieces[at + 1] = slope[k];
    pieces[at + 2] = 3 * rise - 2 * slope[k] - slope[k + 1];
    pieces[at + 3] = slope[k] + slope[k + 1] - 2 * rise;
  }
}

function halfHead(theta: Float64Array, curve: SoilCurve): number {
  const half = 0.5 * (curve.thetaSaturated + theta[theta.length - 1]);
  let k = 0;
  while (k < theta.length - 1 && theta[k] > half) k++;
  return -headAtPoint(k);
}

/** Theta at a head, from the pieces. @example thetaOfHead(curves, -100) */
export function thetaOfHead(curves: HeadCurves, headCm: number): number {
  if (headCm >= 0) return curves.thetaSaturated;
  if (headCm > -wettestHeadCm) {
    return curves.thetaSaturated + (headCm / -wettestHeadCm) * (curves.wetTheta - curves.thetaSaturated);
  }
  const point = (Math.log(-headCm) - logWettest) * piecesPerLog;
  const k = point < pieceCount - 1 ? point | 0 : pieceCount - 1;
  const t = point - k < 1 ? point - k : 1;
  const { pieces } = curves;
  const at = k * 12;
  return pieces[at] + t * (pieces[at + 1] + t * (pieces[at + 2] + t * pieces[at + 3]));
}

/**
 * Head at a theta by bisection on the pieces: 0 from saturation up, the dry end of the pieces from there down. Where
 * theta is flat the wetter end is taken.
 *
 * @example headOfTheta(curves, 0.25)
 */
export function headOfTheta(curves: HeadCurves, theta: number): number {
  if (theta >= curves.thetaSaturated) return 0;
  if (theta >= curves.wetTheta) {
    return (-wettestHeadCm * (curves.thetaSaturated - theta)) / (curves.thetaSaturated - curves.wetTheta);
  }
  let wet = logWettest;
  let dry = logWettest + pieceCount / piecesPerLog;
  for (;;) {
    const middle = 0.5 * (wet + dry);
    if (middle <= wet || middle >= dry) return -Math.exp(wet);
    if (thetaOfHead(curves, -Math.exp(middle)) >= theta) wet = middle;
    else dry = middle;
  }
}
