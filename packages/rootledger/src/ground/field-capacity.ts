import { bisect } from "../numeric/bisect.js";
import { headFromTension, tensionFromHead } from "../units.js";
import { drainCovered } from "./covered-drain.js";
import type { SoilCurve } from "./curve.js";
import { type Profile, profileLayers } from "./profile.js";
import type { VanGenuchten } from "./van-genuchten.js";
import { retentionTheta } from "./van-genuchten-retention.js";

/** Water content at which a soil has drained, and the tension that goes with it. */
export interface FieldCapacity {
  readonly theta: number;
  readonly tensionKPa: number;
}

/** Water in the upper part of a profile after the covered drain. */
export interface DrainedProfile {
  readonly waterCm: number;
  /** Mean over the depth. */
  readonly theta: number;
  /** Mean over the depth. */
  readonly tensionKPa: number;
  /** Mean saturated water content less theta. */
  readonly airFraction: number;
}

/** How a covered profile drains from saturation. */
export interface CoveredDrain {
  /** Depth the answer is for; 30 unless given. */
  readonly depthCm?: number;
  /** Depth of the column that drains; 100 unless given, and at least `depthCm`. */
  readonly columnCm?: number;
  /** 48 unless given. */
  readonly hours?: number;
}

const cellCm = 2.5;

/**
 * Field capacity as a result: a profile soaked, covered and left to drain (gravity below, nothing above).
 * Depths are met in steps of 2.5 cm.
 * @throws RangeError as `drainCovered` and `profileLayers`.
 * @example fieldCapacityByDrain([{ toCm: 100, curve: defaultSoilCurve("clay loam") }]).tensionKPa // about 8.5
 */
export function fieldCapacityByDrain(
  profile: Profile,
  { depthCm = 30, columnCm = 100, hours = 48 }: CoveredDrain = {},
): DrainedProfile {
  if (!(depthCm > 0 && columnCm >= depthCm)) {
    throw new RangeError(`fieldCapacityByDrain requires 0 < depthCm <= columnCm: got ${depthCm}, ${columnCm}`);
  }
  const layers = profileLayers(profile, 0, columnCm);
  const column = drainCovered(layers, { hours, cellCm });
  const cells = Math.round(depthCm / cellCm);
  if (Math.abs(cells * cellCm - depthCm) > 1e-6) {
    throw new RangeError(`fieldCapacityByDrain requires depthCm in steps of ${cellCm} cm: got ${depthCm}`);
  }
  let theta = 0;
  let tensionKPa = 0;
  for (let i = 0; i < cells; i++) {
    theta += column.theta[i] / cells;
    tensionKPa += tensionFromHead(column.headCm[i]) / cells;
  }
  const saturated = profileLayers(profile, 0, depthCm).reduce(
    (sum, { curve, thicknessCm }) => sum + (curve.thetaSaturated * thicknessCm) / depthCm,
    0,
  );
  return { waterCm: theta * depthCm, theta, tensionKPa, airFraction: saturated - theta };
}

/** Water content at a fixed tension; 10 and 33 kPa are the usual conventions. @example fieldCapacityAtTension(curve, 33) */
export const fieldCapacityAtTension = (curve: SoilCurve, tensionKPa: number): FieldCapacity => ({
  theta: curve.thetaAt(headFromTension(tensionKPa)),
  tensionKPa,
});

/**
 * Where gravity alone moves no more than a small flux: K(h) = q. Usual: 0.1 cm/d for a shallow zone within days,
 * 0.01 cm/d for a deep one (common practice, no source).
 * @throws RangeError when K is not between the flux at 1e7 cm and at saturation. @example fieldCapacityByFlux(curve, 0.1)
 */
export function fieldCapacityByFlux(curve: SoilCurve, fluxCmPerD: number): FieldCapacity {
  const flux = fluxCmPerD / 24;
  if (!(flux > curve.conductivityAt(-1e7) && flux < curve.kSatCmPerH)) {
    throw new RangeError(
      `fieldCapacityByFlux requires a flux between 0 and kSat (${24 * curve.kSatCmPerH} cm/d): got ${fluxCmPerD}`,
    );
  }
  const logSuction = bisect((x) => Math.log(curve.conductivityAt(-Math.exp(x)) / flux), Math.log(1e-6), Math.log(1e7));
  const headCm = -Math.exp(logSuction);
  return { theta: curve.thetaAt(headCm), tensionKPa: tensionFromHead(headCm) };
}

/**
 * Closed form for a drainage flux of 0.01 cm/d: Se = n^(-0.60 (2 + log10 kSat)), kSat in cm/d.
 * Source: Twarakavi, Sakai & Simunek (2009), WRR 45:W10410 (from memory).
 * @example fieldCapacityTwarakavi(carselParrishParameters("loam")).theta // 0.2202
 */
export function fieldCapacityTwarakavi(p: VanGenuchten): FieldCapacity {
  const saturation = p.n ** (-0.6 * (2 + Math.log10(24 * p.kSatCmPerH)));
  const m = 1 - 1 / p.n;
  const suctionCm = (saturation ** (-1 / m) - 1) ** (1 / p.n) / p.alphaPerCm;
  return {
    theta: p.thetaResidual + (p.thetaSaturated - p.thetaResidual) * saturation,
    tensionKPa: tensionFromHead(-suctionCm),
  };
}

/**
 * Loss of liquid continuity: h = (1/alpha) m^((1 - 2n)/n), m = (n - 1)/n.
 * Source: Assouline & Or (2014), Vadose Zone J. 13 (from memory; it is where the tangent at the inflection of Se(h) meets 0).
 * @example fieldCapacityAssoulineOr(carselParrishParameters("loam")).theta // 0.2333
 */
export function fieldCapacityAssoulineOr(p: VanGenuchten): FieldCapacity {
  const m = (p.n - 1) / p.n;
  const headCm = -(m ** ((1 - 2 * p.n) / p.n)) / p.alphaPerCm;
  return { theta: retentionTheta(p, headCm), tensionKPa: tensionFromHead(headCm) };
}
