import type { SoilCurve } from "./curve.js";

/** Parameters of the van Genuchten (1980) retention curve and the Mualem (1976) conductivity that goes with it. */
export interface VanGenuchten {
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
  /** Inverse of a suction scale, 1/cm. */
  readonly alphaPerCm: number;
  /** Shape, above 1; m = 1 - 1/n. */
  readonly n: number;
  readonly kSatCmPerH: number;
  /** Tortuosity exponent of Mualem's model, 0.5 unless stated. */
  readonly poreConnectivity?: number;
}

/**
 * How conductivity is treated close to saturation, where Mualem's curve has an infinite slope if n < 2:
 * `raw` leaves it; `linear` makes K linear in head between -1 cm and 0 where n < 1.5;
 * `minimum-capillary-height` flattens retention and conductivity above -2 cm (Vogel, van Genuchten & Cislerova 2001).
 */
export type NearSaturation = "raw" | "linear" | "minimum-capillary-height";

const linearFromHeadCm = -1;
const linearBelowN = 1.5;
const capillaryHeadCm = -2;

/**
 * Se = (1 + (alpha |h|)^n)^-m ; theta = thetaR + (thetaS - thetaR) Se ; K = kSat Se^l [1 - (1 - Se^(1/m))^m]^2.
 * Source: van Genuchten, M.Th. (1980), Soil Sci. Soc. Am. J. 44:892-898, eq. 3, 8.
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
  const { thetaResidual, thetaSaturated, alphaPerCm, n, kSatCmPerH } = parameters;
  const l = parameters.poreConnectivity ?? 0.5;
  if (!(thetaResidual >= 0 && thetaSaturated > thetaResidual && thetaSaturated < 1)) {
    throw new RangeError(`vanGenuchtenCurve requires 0 <= thetaResidual < thetaSaturated < 1: got ${thetaResidual}, ${thetaSaturated}`);
  }
  if (!(n > 1)) throw new RangeError(`vanGenuchtenCurve requires n above 1: got ${n}`);
  if (!(alphaPerCm > 0)) throw new RangeError(`vanGenuchtenCurve requires alphaPerCm above 0: got ${alphaPerCm}`);
  if (!(kSatCmPerH > 0)) throw new RangeError(`vanGenuchtenCurve requires kSatCmPerH above 0: got ${kSatCmPerH}`);
  const m = 1 - 1 / n;
  const pores = thetaSaturated - thetaResidual;
  const rawSaturation = (headCm: number): number => (headCm >= 0 ? 1 : (1 + (alphaPerCm * -headCm) ** n) ** -m);
  const pore = (saturation: number): number => 1 - (1 - saturation ** (1 / m)) ** m;
  const flat = nearSaturation === "minimum-capillary-height";
  const saturationAtFlat = flat ? rawSaturation(capillaryHeadCm) : 1;
  const saturationAt = (headCm: number): number =>
    flat ? (headCm >= capillaryHeadCm ? 1 : rawSaturation(headCm) / saturationAtFlat) : rawSaturation(headCm);
  const rawConductivity = (headCm: number): number => {
    if (headCm >= 0 || (flat && headCm >= capillaryHeadCm)) return kSatCmPerH;
    const raw = rawSaturation(headCm);
    const ratio = flat ? pore(raw) / pore(saturationAtFlat) : pore(raw);
    return kSatCmPerH * saturationAt(headCm) ** l * ratio * ratio;
  };
  const linear = nearSaturation === "linear" && n < linearBelowN;
  const conductivityAtLinear = linear ? rawConductivity(linearFromHeadCm) : 0;
  return {
    name,
    source,
    thetaSaturated,
    thetaResidual,
    kSatCmPerH,
    thetaAt: (headCm) => thetaResidual + pores * saturationAt(headCm),
    conductivityAt: (headCm) =>
      linear && headCm > linearFromHeadCm && headCm < 0
        ? kSatCmPerH + (headCm / linearFromHeadCm) * (conductivityAtLinear - kSatCmPerH)
        : rawConductivity(headCm),
    capacityAt: (headCm) => {
      if (headCm >= 0 || (flat && headCm >= capillaryHeadCm)) return 0;
      const x = alphaPerCm * -headCm;
      const xn = x ** n;
      return (pores * m * n * alphaPerCm * x ** (n - 1) * (1 + xn) ** (-m - 1)) / saturationAtFlat;
    },
  };
}
