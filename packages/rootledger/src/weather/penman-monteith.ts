import { vapourPressureSlopeKPaPerC } from "./vapour-pressure.js";

/** What the combination equation needs; radiation and heat flux are sums over the time step. */
export interface PenmanMonteithInputs {
  readonly meanTempC: number;
  readonly saturationVapourPressureKPa: number;
  readonly actualVapourPressureKPa: number;
  readonly windAt2mMPerS: number;
  readonly netRadiationMJPerM2: number;
  /** Downward; about 0 over a day. */
  readonly soilHeatFluxMJPerM2: number;
  readonly psychrometricConstantKPaPerC: number;
}

/**
 * Reference evapotranspiration of the FAO-56 grass, mm/day:
 * (0.408 D (Rn - G) + g 900/(T + 273) u2 (es - ea)) / (D + g (1 + 0.34 u2)). Source: FAO-56 eq. 6.
 * Negative where dew outweighs it: the caller decides.
 *
 * @example et0PenmanMonteithMmPerDay({ meanTempC: 16.9, saturationVapourPressureKPa: 1.997, actualVapourPressureKPa: 1.409, windAt2mMPerS: 2.078, netRadiationMJPerM2: 13.28, soilHeatFluxMJPerM2: 0, psychrometricConstantKPaPerC: 0.0666 }) // 3.9
 */
export const et0PenmanMonteithMmPerDay = (day: PenmanMonteithInputs): number => penmanMonteith(day, fao56GrassDaily);

/** Numerator constant Cn (K mm s3 / Mg per time step) and denominator constant Cd (s/m) of a reference surface and time step. */
export interface ReferenceSurface {
  readonly numerator: number;
  readonly denominator: number;
}

/** FAO-56 eq. 6. */
export const fao56GrassDaily: ReferenceSurface = { numerator: 900, denominator: 0.34 };

/** The combination equation that FAO-56 eq. 6 and ASCE-EWRI (2005) eq. 1 share, for any surface. @example penmanMonteith(day, fao56GrassDaily) */
export function penmanMonteith(at: PenmanMonteithInputs, surface: ReferenceSurface): number {
  const slope = vapourPressureSlopeKPaPerC(at.meanTempC);
  const gamma = at.psychrometricConstantKPaPerC;
  const wind = at.windAt2mMPerS;
  const deficit = at.saturationVapourPressureKPa - at.actualVapourPressureKPa;
  const radiationPart = 0.408 * slope * (at.netRadiationMJPerM2 - at.soilHeatFluxMJPerM2);
  const windPart = ((gamma * surface.numerator) / (at.meanTempC + 273)) * wind * deficit;
  return (radiationPart + windPart) / (slope + gamma * (1 + surface.denominator * wind));
}
