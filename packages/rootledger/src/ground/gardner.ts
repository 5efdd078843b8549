/**
 * Conductivity K = kSat / (1 + (|h|/hk)^eta), flat near saturation and a power law when dry.
 * Source: Gardner (1958), Soil Sci. 85:228-232 (K = a/(|h|^n + b), here written with b = hk^eta and a = kSat b).
 */
export interface GardnerConductivity {
  readonly kSatCmPerH: number;
  /** Suction at which K is half of kSat, cm. */
  readonly halfHeadCm: number;
  readonly exponent: number;
}

/** K in cm/h; kSat at and above zero head. @example gardnerConductivityAt({ kSatCmPerH: 2, halfHeadCm: 20, exponent: 3 }, -20) // 1 */
export function gardnerConductivityAt(p: GardnerConductivity, headCm: number): number {
  if (headCm >= 0) return p.kSatCmPerH;
  return p.kSatCmPerH / (1 + (-headCm / p.halfHeadCm) ** p.exponent);
}
