/** Albedo of the reference crop. Source: FAO-56 eq. 38. */
const referenceAlbedo = 0.23;

/** Stefan-Boltzmann constant, MJ per K4, m2 and day. Source: FAO-56 eq. 39. */
export const stefanBoltzmannMJPerK4M2Day = 4.903e-9;

const kelvin = (tempC: number): number => tempC + 273.16;

/** Net shortwave radiation of the reference crop: (1 - 0.23) Rs. Source: FAO-56 eq. 38. @example netShortwaveMJPerM2(22.07) // 17.0 */
export const netShortwaveMJPerM2 = (solarMJPerM2: number): number => (1 - referenceAlbedo) * solarMJPerM2;

/** Radiation of a black body, MJ/m2 per day. Source: FAO-56 eq. 39, Annex 2 table 2.8. @example blackBodyMJPerM2Day(25.1) // 38.8 */
export const blackBodyMJPerM2Day = (tempC: number, sigma: number = stefanBoltzmannMJPerK4M2Day): number => {
  const squared = kelvin(tempC) * kelvin(tempC);
  return sigma * squared * squared;
};

/** Humidity term of net longwave: 0.34 - 0.14 sqrt(ea). Source: FAO-56 eq. 39. @example humidityTerm(2.1) // 0.14 */
export const humidityTerm = (actualVapourPressureKPa: number): number =>
  0.34 - 0.14 * Math.sqrt(actualVapourPressureKPa);

/** Cloud term of net longwave: 1.35 Rs/Rso - 0.35, Rs/Rso being at most 1. Source: FAO-56 eq. 39. @example cloudTerm(14.5 / 18.8) // 0.69 */
export const cloudTerm = (relativeShortwave: number): number => 1.35 * Math.min(relativeShortwave, 1) - 0.35;

/** ASCE-EWRI (2005) eq. 18, lower limit of the cloud term; FAO-56 gives an upper limit only. */
export const leastCloudTerm = 0.05;

/** What the net longwave radiation of a day follows from. */
export interface Longwave {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly humidityTerm: number;
  readonly cloudTerm: number;
  readonly sigma?: number;
}

/**
 * Net outgoing longwave radiation, MJ/m2 per day: mean of the black bodies at Tmax and Tmin, times the humidity term, times the
 * cloud term. Source: FAO-56 eq. 39.
 *
 * @example netLongwaveMJPerM2Day({ tMinC: 19.1, tMaxC: 25.1, humidityTerm: humidityTerm(2.1), cloudTerm: cloudTerm(14.5 / 18.8) }) // 3.5
 */
export const netLongwaveMJPerM2Day = ({ tMinC, tMaxC, humidityTerm, cloudTerm, sigma }: Longwave): number =>
  ((blackBodyMJPerM2Day(tMaxC, sigma) + blackBodyMJPerM2Day(tMinC, sigma)) / 2) * humidityTerm * cloudTerm;
