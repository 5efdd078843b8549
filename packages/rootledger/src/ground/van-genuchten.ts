import type { SoilCurve } from "./curve.js";
import {
  effectiveSaturation,
  requireRetention,
  retentionCapacity,
  retentionTheta,
  type VanGenuchtenRetention,
} from "./van-genuchten-retention.js";

/** Parameters of the van Genuchten (1980) retention curve and the Mualem (1976) conductivity that goes with it. */
export interface VanGenuchten extends VanGenuchtenRetention {
  readonly kSatCmPerH: number;
  /** Tortuosity exponent of Mualem's model, 0.5 unless stated. */
  readonly poreConnectivity?: number;
}

/**
 * How conductivity is treated close to saturation, where Mualem's curve has an infinite slope if n < 2:
 * `raw` leaves it; `linear` makes K linear in head between -1 cm and 0 where n < 1.5;
 * `minimum-capillary-height` keeps the soil saturated down to -2 cm and rescales both functions below it
 * (Vogel, van Genuchten & Cislerova 2000, Adv. Water Resour. 24:133-144).
 */
export type NearSaturation = "raw" | "linear" | "minimum-capillary-height";

const linearFromHeadCm = -1;
const linearBelowN = 1.5;
const capillaryHeadCm = -2;

/**
 * Se = (1 + (alpha |h|)^n)^-m ; theta = thetaR + (thetaS - thetaR) Se ; K = kSat Se^l [1 - (1 - Se^(1/m))^m]^2, m = 1 - 1/n.
 * Source: van Genuchten, M.Th. (1980), Soil Sci. Soc. Am. J. 44:892-898, eq. 3, 8; Mualem (1976), WRR 12:513-522.
 *
 * @throws RangeError if a parameter is outside its range.
 * @example vanGenuchtenCurve("loam", parameters, "Carsel & Parrish 1988").thetaAt(-100)
 */
export function vanGenuchtenCurve(
  name: string,
  parameters: VanGenuchten,
  source: string,
  nearSaturation: NearSaturation = "linear",
): SoilCurve {
  requireRetention("vanGenuchtenCurve", parameters);
  if (!(parameters.kSatCmPerH > 0)) {
    throw new RangeError(`vanGenuchtenCurve requires kSatCmPerH above 0: got ${parameters.kSatCmPerH}`);
  }
  const { thetaResidual, thetaSaturated, kSatCmPerH } = parameters;
  const limits = { name, source, thetaSaturated, thetaResidual, kSatCmPerH };
  if (nearSaturation === "minimum-capillary-height") return { ...limits, ...rescaled(parameters) };
  if (nearSaturation === "linear" && parameters.n < linearBelowN) {
    return { ...limits, ...plain(parameters), conductivityAt: straightened(parameters) };
  }
  return { ...limits, ...plain(parameters) };
}

type Functions = Pick<SoilCurve, "thetaAt" | "capacityAt" | "conductivityAt">;

/** Mualem's bracket 1 - (1 - S^(1/m))^m, written so that small values keep their digits. */
const bracket = (saturation: number, m: number): number =>
  saturation >= 1 ? 1 : -Math.expm1(m * Math.log1p(-(saturation ** (1 / m))));

function plain(p: VanGenuchten): Functions {
  const l = p.poreConnectivity ?? 0.5;
  const m = 1 - 1 / p.n;
  return {
    thetaAt: (headCm) => retentionTheta(p, headCm),
    capacityAt: (headCm) => retentionCapacity(p, headCm),
    conductivityAt(headCm) {
      const saturation = effectiveSaturation(p, headCm);
      return p.kSatCmPerH * saturation ** l * bracket(saturation, m) ** 2;
    },
  };
}

function straightened(p: VanGenuchten): (headCm: number) => number {
  const { conductivityAt } = plain(p);
  const kAtEnd = conductivityAt(linearFromHeadCm);
  return (headCm) =>
    headCm > linearFromHeadCm && headCm < 0
      ? p.kSatCmPerH + (headCm / linearFromHeadCm) * (kAtEnd - p.kSatCmPerH)
      : conductivityAt(headCm);
}

/** theta and K of the raw curve, each divided by its own value at the capillary height so that both are full there. */
function rescaled(p: VanGenuchten): Functions {
  const l = p.poreConnectivity ?? 0.5;
  const m = 1 - 1 / p.n;
  const saturationAtHeight = effectiveSaturation(p, capillaryHeadCm);
  const bracketAtHeight = bracket(saturationAtHeight, m);
  const pores = (p.thetaSaturated - p.thetaResidual) / saturationAtHeight;
  return {
    thetaAt: (headCm) =>
      headCm >= capillaryHeadCm ? p.thetaSaturated : p.thetaResidual + pores * effectiveSaturation(p, headCm),
    capacityAt: (headCm) => (headCm >= capillaryHeadCm ? 0 : retentionCapacity(p, headCm) / saturationAtHeight),
    conductivityAt(headCm) {
      if (headCm >= capillaryHeadCm) return p.kSatCmPerH;
      const saturation = effectiveSaturation(p, headCm);
      const ratio = bracket(saturation, m) / bracketAtHeight;
      return p.kSatCmPerH * (saturation / saturationAtHeight) ** l * ratio * ratio;
    },
  };
}
