import { requirePositive } from "../numeric/require-positive.js";
import type { EmitterRun, WettedSize } from "./schwartzman-zur.js";

/**
 * R = rise^-0.5626 V^0.2686 q^-0.0028 kSat^-0.0344 (radius at the surface), Z = rise^-0.383 V^0.365 q^-0.101 kSat^0.195, in
 * cm with V in cm3, q in cm3/h, kSat in cm/h. The paper takes half the saturated water content as the mean rise.
 * Source: Amin & Ekhmaj (2006), 7th Int. Micro Irrigation Congress 1:503-513, equations from memory; their units were settled
 * by the volume of the body.
 * @param thetaRise mean rise of the water content in the wetted body, m3/m3
 * @throws RangeError when an argument is not above 0.
 * @example aminEkhmaj({ emitterFlowCm3PerH: 4000, volumeCm3: 12000, kSatCmPerH: 2 }, 0.2) // { widthCm: 58.8, depthCm: 28.3 }
 */
export function aminEkhmaj(run: EmitterRun, thetaRise: number): WettedSize {
  const { emitterFlowCm3PerH, volumeCm3, kSatCmPerH } = run;
  requirePositive("aminEkhmaj", { emitterFlowCm3PerH, volumeCm3, kSatCmPerH, thetaRise });
  const radiusCm = thetaRise ** -0.5626 * volumeCm3 ** 0.2686 * emitterFlowCm3PerH ** -0.0028 * kSatCmPerH ** -0.0344;
  return {
    widthCm: 2 * radiusCm,
    depthCm: thetaRise ** -0.383 * volumeCm3 ** 0.365 * emitterFlowCm3PerH ** -0.101 * kSatCmPerH ** 0.195,
  };
}
