import type { SoilCurve } from "./curve.js";
import { type GardnerConductivity, gardnerConductivityAt } from "./gardner.js";
import {
  requireRetention,
  retentionCapacity,
  retentionTheta,
  type VanGenuchtenRetention,
} from "./van-genuchten-retention.js";

/** Van Genuchten's retention with a conductivity curve of its own. */
export interface GardnerCurveParameters extends VanGenuchtenRetention, GardnerConductivity {}

/**
 * theta = thetaR + (thetaS - thetaR)(1 + (alpha |h|)^n)^-(1 - 1/n) ; K = kSat / (1 + (|h|/hk)^eta).
 * Conductivity is not derived from retention: near 8 kPa, Mualem's rule from kSat misses drainage in the field by one
 * to two orders of magnitude. Sources: van Genuchten (1980); Gardner (1958).
 * @throws RangeError when a parameter is outside its range; eta must exceed 1 so that the matric flux potential is finite.
 * @example gardnerCurve({ ...retention, kSatCmPerH: 1.5, halfHeadCm: 15, exponent: 2.6 }, "loam", "own fit")
 */
export function gardnerCurve(p: GardnerCurveParameters, name: string, source: string): SoilCurve {
  requireRetention("gardnerCurve", p);
  if (!(p.kSatCmPerH > 0)) {
    throw new RangeError(`gardnerCurve requires kSatCmPerH above 0: got ${p.kSatCmPerH}`);
  }
  if (!(p.halfHeadCm > 0)) {
    throw new RangeError(`gardnerCurve requires halfHeadCm above 0: got ${p.halfHeadCm}`);
  }
  if (!(p.exponent > 1)) {
    throw new RangeError(`gardnerCurve requires exponent above 1: got ${p.exponent}`);
  }
  return {
    name,
    source,
    thetaSaturated: p.thetaSaturated,
    thetaResidual: p.thetaResidual,
    kSatCmPerH: p.kSatCmPerH,
    thetaAt: (headCm) => retentionTheta(p, headCm),
    capacityAt: (headCm) => retentionCapacity(p, headCm),
    conductivityAt: (headCm) => gardnerConductivityAt(p, headCm),
  };
}
