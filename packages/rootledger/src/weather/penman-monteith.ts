import { vapourPressureSlopeKPaPerC } from "./vapour-pressure.js";

export interface PenmanMonteithDay {
  readonly meanTempC: number;
  readonly saturationVapourPressureKPa: number;
  readonly actualVapourPressureKPa: number;
  readonly windAt2mMPerS: number;
  readonly netRadiationMJPerM2Day: number;
  /** About 0 over a day. */
  readonly soilHeatFluxMJPerM2Day: number;
  readonly psychrometricConstantKPaPerC: number;
}

/**
 * Reference evapotranspiration of the FAO-56 grass, mm/day:
 * (0.408 D (Rn - G) + g 900/(T + 273) u2 (es - ea)) / (D + g (1 + 0.34 u2)). Source: FAO-56 eq. 6.
 * Negative where dew outweighs it: the caller decides.
 *
 * @example et0PenmanMonteithMmPerDay({ meanTempC: 16.9, saturationVapourPressureKPa: 1.997, actualVapourPressureKPa: 1.409, windAt2mMPerS: 2.078, netRadiationMJPerM2Day: 13.28, soilHeatFluxMJPerM2Day: 0, psychrometricConstantKPaPerC: 0.0666 }) // 3.9
 */
export const et0PenmanMonteithMmPerDay = (day: PenmanMonteithDay): number => penmanMonteith(day, fao56GrassDaily);

/** Numerator constant Cn (K mm s3 / Mg / d) and denominator constant Cd (s/m) of a reference surface and time step. */
export interface ReferenceSurface {
  readonly numerator: number;
  readonly denominator: number;
}

/** FAO-56 eq. 6. */
export const fao56GrassDaily: ReferenceSurface = { numerator: 900, denominator: 0.34 };

/** The combination equation that FAO-56 eq. 6 and ASCE-EWRI (2005) eq. 1 share, for any surface. @example penmanMonteith(day, fao56GrassDaily) */
export function penmanMonteith(day: PenmanMonteithDay, surface: ReferenceSurface): number {
  const slope = vapourPressureSlopeKPaPerC(day.meanTempC);
  const gamma = day.psychrometricConstantKPaPerC;
  const wind = day.windAt2mMPerS;
  const deficit = day.saturationVapourPressureKPa - day.actualVapourPressureKPa;
  const radiationPart = 0.408 * slope * (day.netRadiationMJPerM2Day - day.soilHeatFluxMJPerM2Day);
  const windPart = ((gamma * surface.numerator) / (day.meanTempC + 273)) * wind * deficit;
  return (radiationPart + windPart) / (slope + gamma * (1 + surface.denominator * wind));
}
