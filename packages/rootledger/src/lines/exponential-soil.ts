/**
 * Soil whose conductivity falls exponentially with suction, K = kSat exp(alpha h), h in cm and negative: the one for which
 * steady flow from a source is linear. Source: Gardner (1958), Soil Sci. 85:228-232.
 * For any other curve take alpha = 1 / its macroscopic capillary length: about 0.01 in structureless clay, 0.12 in most
 * structured soils, 0.36 1/cm in coarse sand (White & Sully 1987; Elrick, Reynolds & Tan 1989; from memory).
 */
export interface ExponentialSoil {
  readonly kSatCmPerH: number;
  readonly alphaPerCm: number;
}
