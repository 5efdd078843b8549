import type { SoilCurve } from "./curve.js";
import { requireThetaRange } from "./van-genuchten-retention.js";

/** Parameters of Brooks and Corey's curve. */
export interface BrooksCorey {
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
  /** Suction at which air enters, cm. */
  readonly airEntryCm: number;
  /** Pore-size index, above 0. */
  readonly lambda: number;
  readonly kSatCmPerH: number;
}

/**
 * Se = (hb/|h|)^lambda where |h| > hb, else 1; theta = thetaR + (thetaS - thetaR) Se; K = kSat Se^(3 + 2/lambda).
 * Source: Brooks & Corey (1964), Colorado State Univ. Hydrol. Paper 3, with Burdine's conductivity.
 * @throws RangeError when a parameter is outside its range.
 * @example brooksCoreyCurve("sandy loam", { thetaResidual: 0.04, thetaSaturated: 0.45, airEntryCm: 14.7, lambda: 0.38, kSatCmPerH: 2.6 }, "Rawls et al. 1982")
 */
export function brooksCoreyCurve(name: string, p: BrooksCorey, source: string): SoilCurve {
  requireThetaRange("brooksCoreyCurve", p.thetaResidual, p.thetaSaturated);
  for (const key of ["airEntryCm", "lambda", "kSatCmPerH"] as const) {
    if (!(p[key] > 0)) throw new RangeError(`brooksCoreyCurve requires ${key} above 0: got ${p[key]}`);
  }
  const pores = p.thetaSaturated - p.thetaResidual;
  const kExponent = 3 + 2 / p.lambda;
  const saturation = (headCm: number): number => (headCm >= -p.airEntryCm ? 1 : (-headCm / p.airEntryCm) ** -p.lambda);
  return {
    name,
    source,
    thetaSaturated: p.thetaSaturated,
    thetaResidual: p.thetaResidual,
    kSatCmPerH: p.kSatCmPerH,
    thetaAt: (headCm) => p.thetaResidual + pores * saturation(headCm),
    capacityAt: (headCm) => (headCm >= -p.airEntryCm ? 0 : (pores * p.lambda * saturation(headCm)) / -headCm),
    conductivityAt: (headCm) => p.kSatCmPerH * saturation(headCm) ** kExponent,
  };
}

/** Parameters of Campbell's curve. */
export interface Campbell {
  readonly thetaSaturated: number;
  /** Suction at which air enters, cm. */
  readonly airEntryCm: number;
  /** Slope of ln|h| against ln theta. */
  readonly b: number;
  readonly kSatCmPerH: number;
}

/**
 * |h| = psi (theta/thetaS)^-b, K = kSat (theta/thetaS)^(2b + 3): Brooks & Corey with no residual and lambda = 1/b.
 * Source: Campbell (1974), Soil Sci. 117:311-314; Clapp & Hornberger (1978), WRR 14:601-604 (without their parabola
 * next to saturation).
 * @throws RangeError when a parameter is outside its range.
 * @example campbellCurve("sand", { thetaSaturated: 0.395, airEntryCm: 12.1, b: 4.05, kSatCmPerH: 63.4 }, "Clapp & Hornberger 1978")
 */
export const campbellCurve = (name: string, p: Campbell, source: string): SoilCurve =>
  brooksCoreyCurve(name, brooksCoreyOfCampbell(p), source);

/** Campbell's law as Brooks & Corey's. @throws RangeError when b is not above 0. */
export function brooksCoreyOfCampbell({ thetaSaturated, airEntryCm, b, kSatCmPerH }: Campbell): BrooksCorey {
  if (!(b > 0)) throw new RangeError(`campbellCurve requires b above 0: got ${b}`);
  return { thetaResidual: 0, thetaSaturated, airEntryCm, lambda: 1 / b, kSatCmPerH };
}
