import { solarDeclinationRad } from "./sun.js";

/**
 * Height of the sun above the horizon at solar noon, rad: arcsin(sin(latitude) sin(declination) + cos(latitude) cos(declination)).
 * Source: FAO-56 (Allen et al. 1998) ch. 9, box 18. Negative where the sun does not rise.
 *
 * @example noonSunHeightRad(latitudeRad(40), 200) // 1.235
 */
export const noonSunHeightRad = (latitudeRad: number, dayOfYear: number): number =>
  Math.PI / 2 - Math.abs(latitudeRad - solarDeclinationRad(dayOfYear));
