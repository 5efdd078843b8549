import type { SoilCurve } from "rootledger/ground";

/** Saturated above `wetHeadCm`, the given functions below it; capacity by central difference. */
function curve(
  name: string,
  source: string,
  limits: { thetaResidual: number; thetaSaturated: number; kSatCmPerH: number; wetHeadCm?: number },
  thetaOf: (suctionCm: number) => number,
  conductivityOf: (suctionCm: number) => number,
): SoilCurve {
  const { thetaResidual, thetaSaturated, kSatCmPerH, wetHeadCm = 0 } = limits;
  const thetaAt = (headCm: number): number => (headCm >= wetHeadCm ? thetaSaturated : thetaOf(-headCm));
  return {
    name,
    source,
    thetaResidual,
    thetaSaturated,
    kSatCmPerH,
    thetaAt,
    conductivityAt: (headCm) => (headCm >= 0 ? kSatCmPerH : conductivityOf(-headCm)),
    capacityAt: (headCm) => {
      const reach = 1e-5 * (1 - headCm);
      return (thetaAt(headCm + reach) - thetaAt(headCm - reach)) / (2 * reach);
    },
  };
}

const secondsPerH = 3600;

/** Haverkamp et al. (1977), Soil Sci. Soc. Am. J. 41:285-294, sand; as used by Celia et al. (1990). Parameters from memory. */
export const haverkampSand: SoilCurve = curve(
  "Haverkamp sand",
  "Haverkamp et al. (1977); Celia et al. (1990)",
  { thetaResidual: 0.075, thetaSaturated: 0.287, kSatCmPerH: 0.00944 * secondsPerH },
  (s) => 0.075 + (1.611e6 * (0.287 - 0.075)) / (1.611e6 + s ** 3.96),
  (s) => (0.00944 * secondsPerH * 1.175e6) / (1.175e6 + s ** 4.74),
);

/** Haverkamp et al. (1977), Yolo light clay; theta is full above -1 cm. Parameters from memory. */
export const yoloLightClay: SoilCurve = curve(
  "Yolo light clay",
  "Haverkamp et al. (1977)",
  { thetaResidual: 0.124, thetaSaturated: 0.495, kSatCmPerH: 1.23e-5 * secondsPerH, wetHeadCm: -1 },
  (s) => 0.124 + (739 * (0.495 - 0.124)) / (739 + Math.log(s) ** 4),
  (s) => (1.23e-5 * secondsPerH * 124.6) / (124.6 + s ** 1.77),
);

/** Gardner (1958), Soil Sci. 85:228-232: K = kSat exp(alpha h), with theta in step with K, which makes Richards' equation linear. */
export const exponentialSoil = (p: {
  readonly alphaPerCm: number;
  readonly kSatCmPerH: number;
  readonly thetaResidual: number;
  readonly thetaSaturated: number;
}): SoilCurve =>
  curve(
    "exponential soil",
    "Gardner (1958)",
    p,
    (s) => p.thetaResidual + (p.thetaSaturated - p.thetaResidual) * Math.exp(-p.alphaPerCm * s),
    (s) => p.kSatCmPerH * Math.exp(-p.alphaPerCm * s),
  );

/** Gardner (1958): K = a / (|h|^n + b), with a plain retention curve that steady flow does not see. */
export const powerSoil = (p: { readonly a: number; readonly b: number; readonly n: number }): SoilCurve =>
  curve(
    "power-law soil",
    "Gardner (1958)",
    { thetaResidual: 0.05, thetaSaturated: 0.4, kSatCmPerH: p.a / p.b },
    (s) => 0.05 + 0.35 / (1 + s / 50),
    (s) => p.a / (s ** p.n + p.b),
  );
