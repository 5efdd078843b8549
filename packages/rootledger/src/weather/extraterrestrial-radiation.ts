import { inverseRelativeDistance, solarDeclinationRad, sunsetHourAngleRad } from "./sun.js";

/** Solar constant, MJ per m2 and minute. Source: FAO-56 eq. 21. */
const solarConstantMJPerM2Min = 0.082;

/**
 * Extraterrestrial radiation of a day, MJ/m2: 24 60/pi Gsc dr (ws sin(lat) sin(decl) + cos(lat) cos(decl) sin(ws)).
 * Source: FAO-56 eq. 21. Any latitude; 0 in the polar night.
 *
 * @example extraterrestrialRadiationMJPerM2Day(-20 * Math.PI / 180, 246) // 32.2
 */
export function extraterrestrialRadiationMJPerM2Day(latitudeRad: number, dayOfYear: number): number {
  const declination = solarDeclinationRad(dayOfYear);
  const sunset = sunsetHourAngleRad(latitudeRad, declination);
  const height =
    sunset * Math.sin(latitudeRad) * Math.sin(declination) +
    Math.cos(latitudeRad) * Math.cos(declination) * Math.sin(sunset);
  return ((24 * 60) / Math.PI) * solarConstantMJPerM2Min * inverseRelativeDistance(dayOfYear) * height;
}

/** Seasonal correction of solar time, h: 0.1645 sin 2b - 0.1255 cos b - 0.025 sin b, b = 2 pi (J - 81) / 364. Source: FAO-56 eqs 32, 33. @example solarTimeCorrectionH(274) // 0.1889 */
export function solarTimeCorrectionH(dayOfYear: number): number {
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

/** A clock time and where it is read. */
export interface SolarClock {
  /** Clock time at the middle of the period, h. */
  readonly clockMiddleH: number;
  /** Longitude of the place and of the centre of its time zone, degrees west of Greenwich. */
  readonly longitudeDegWest: number;
  readonly zoneLongitudeDegWest: number;
  readonly dayOfYear: number;
}

/**
 * Solar time angle, rad: pi/12 ((t + 0.06667 (Lz - Lm) + Sc) - 12), negative before solar noon. Source: FAO-56 eq. 31.
 *
 * @example solarTimeAngleRad({ clockMiddleH: 14.5, longitudeDegWest: 16.25, zoneLongitudeDegWest: 15, dayOfYear: 274 }) // 0.682
 */
export const solarTimeAngleRad = (at: SolarClock): number =>
  (Math.PI / 12) *
  (at.clockMiddleH +
    0.06667 * (at.zoneLongitudeDegWest - at.longitudeDegWest) +
    solarTimeCorrectionH(at.dayOfYear) -
    12);

/** A stretch of a day for which radiation is reckoned. */
export interface RadiationPeriod {
  readonly latitudeRad: number;
  readonly dayOfYear: number;
  /** Solar time angle at the middle of the period. */
  readonly middleAngleRad: number;
  readonly lengthH: number;
}

/**
 * Extraterrestrial radiation of a period of an hour or less, MJ/m2. Source: FAO-56 eqs 28 to 30. The period is cut at sunrise
 * and sunset; with the sun down it is 0.
 *
 * @example extraterrestrialRadiationMJPerM2({ latitudeRad: 0.283, dayOfYear: 274, middleAngleRad: 0.682, lengthH: 1 }) // 3.544
 */
export function extraterrestrialRadiationMJPerM2(period: RadiationPeriod): number {
  const { latitudeRad, dayOfYear, middleAngleRad, lengthH } = period;
  const declination = solarDeclinationRad(dayOfYear);
  const sunset = sunsetHourAngleRad(latitudeRad, declination);
  const halfWidth = (Math.PI * lengthH) / 24;
  const begin = Math.max(middleAngleRad - halfWidth, -sunset);
  const end = Math.min(middleAngleRad + halfWidth, sunset);
  if (!(end > begin)) return 0;
  const height =
    (end - begin) * Math.sin(latitudeRad) * Math.sin(declination) +
    Math.cos(latitudeRad) * Math.cos(declination) * (Math.sin(end) - Math.sin(begin));
  return ((12 * 60) / Math.PI) * solarConstantMJPerM2Min * inverseRelativeDistance(dayOfYear) * height;
}
