import { blackBodyMJPerM2Day, cloudTerm, humidityTerm, netShortwaveMJPerM2 } from "./net-radiation.js";

/** What the net radiation of an hour follows from. */
export interface RadiationHour {
  readonly tempC: number;
  readonly actualVapourPressureKPa: number;
  readonly solarMJPerM2: number;
  /** Rs/Rso of the hour; at night that of two to three hours before sunset (FAO-56 ch. 4). */
  readonly relativeShortwave: number;
}

/** Net outgoing longwave radiation of an hour, MJ/m2: FAO-56 eq. 39 at the hour's temperature with sigma / 24. @example hourNetLongwaveMJPerM2({ tempC: 38, actualVapourPressureKPa: 3.445, solarMJPerM2: 2.45, relativeShortwave: 0.922 }) // 0.137 */
export const hourNetLongwaveMJPerM2 = (hour: RadiationHour): number =>
  (blackBodyMJPerM2Day(hour.tempC) / 24) *
  humidityTerm(hour.actualVapourPressureKPa) *
  cloudTerm(hour.relativeShortwave);

/** Net radiation of an hour over the reference crop, MJ/m2. Source: FAO-56 eq. 40. @example hourNetRadiationMJPerM2({ tempC: 38, actualVapourPressureKPa: 3.445, solarMJPerM2: 2.45, relativeShortwave: 0.922 }) // 1.749 */
export const hourNetRadiationMJPerM2 = (hour: RadiationHour): number =>
  netShortwaveMJPerM2(hour.solarMJPerM2) - hourNetLongwaveMJPerM2(hour);
