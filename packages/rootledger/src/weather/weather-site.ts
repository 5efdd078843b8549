/** Where a record was measured. */
export interface WeatherSite {
  /** Degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Metres above sea level, -450 to 9000. */
  readonly elevationM: number;
  /** Height of the anemometer over short grass, 0.5 to 100 m. */
  readonly windHeightM: number;
  /** FAO-56 eq. 50, used on days without sunshine and radiation: 0.16 inland, 0.19 on the coast. Default 0.16. */
  readonly krs?: number;
  /** Kp of the pan, 0.35 to 1.1, for the method "pan". */
  readonly panCoefficient?: number;
}

/**
 * How reference evapotranspiration comes about: FAO-56 eq. 6, the ASCE-EWRI (2005) short reference, FAO-56 eq. 52, the record's
 * `panMm` by FAO-56 eq. 55, or the record's own `et0Mm`.
 */
export type Et0Method = "penman-monteith" | "asce-short" | "hargreaves-samani" | "pan" | "given";
