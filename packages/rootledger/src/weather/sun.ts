/** Radians from degrees, north positive. Source: FAO-56 eq. 22. @example latitudeRad(-22.9) // -0.400 */
export const latitudeRad = (latitudeDeg: number): number => (Math.PI / 180) * latitudeDeg;

/** Inverse relative distance earth-sun: 1 + 0.033 cos(2 pi J / 365). Source: FAO-56 eq. 23. @example inverseRelativeDistance(246) // 0.985 */
export const inverseRelativeDistance = (dayOfYear: number): number =>
  1 + 0.033 * Math.cos(((2 * Math.PI) / 365) * dayOfYear);

/** Solar declination, rad: 0.409 sin(2 pi J / 365 - 1.39). Source: FAO-56 eq. 24. @example solarDeclinationRad(246) // 0.120 */
export const solarDeclinationRad = (dayOfYear: number): number =>
  0.409 * Math.sin(((2 * Math.PI) / 365) * dayOfYear - 1.39);

/**
 * Hour angle of sunset, rad: arccos(-tan(latitude) tan(declination)). Source: FAO-56 eq. 25. Where the sun does not rise it
 * is 0, where it does not set it is pi.
 *
 * @example sunsetHourAngleRad(-0.349, 0.120) // 1.527
 */
export function sunsetHourAngleRad(latitudeRad: number, declinationRad: number): number {
  const cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad);
  return cosine >= 1 ? 0 : cosine <= -1 ? Math.PI : Math.acos(cosine);
}

/** Hours from sunrise to sunset: 24/pi times the sunset hour angle. Source: FAO-56 eq. 34. @example dayLengthH(-0.4, 135) // 10.9 */
export const dayLengthH = (latitudeRad: number, dayOfYear: number): number =>
  (24 / Math.PI) * sunsetHourAngleRad(latitudeRad, solarDeclinationRad(dayOfYear));

/** When the sun rises and sets. */
export interface SunTimes {
  readonly sunriseH: number;
  readonly sunsetH: number;
}

/**
 * Sunrise and sunset in local solar hours, noon at 12, half of FAO-56's day length either side. The polar day is 0 to 24, the
 * polar night 12 to 12.
 *
 * @example sunTimes(0, 80) // { sunriseH: 6, sunsetH: 18 }
 */
export function sunTimes(latitudeRad: number, dayOfYear: number): SunTimes {
  const half = dayLengthH(latitudeRad, dayOfYear) / 2;
  return { sunriseH: 12 - half, sunsetH: 12 + half };
}
