import { type SoilTable, tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";

/** A soil as the reference study writes it. */
export interface ReferenceSoil {
  readonly name: string;
  readonly theta_r: number;
  readonly theta_s: number;
  readonly alpha_per_cm: number;
  readonly n: number;
  readonly Ks_cm_per_h: number;
}

/** The clay whose numbers hang on how its curve is treated near saturation; a picture, not a target. */
export const isAwkwardClay = (soil: ReferenceSoil): boolean => soil.n < 1.1;

export function tableOf(s: ReferenceSoil): SoilTable {
  const parameters = {
    thetaResidual: s.theta_r,
    thetaSaturated: s.theta_s,
    alphaPerCm: s.alpha_per_cm,
    n: s.n,
    kSatCmPerH: s.Ks_cm_per_h,
  };
  return tabulateSoil(vanGenuchtenCurve(s.name, parameters, "Carsel & Parrish (1988)"));
}
