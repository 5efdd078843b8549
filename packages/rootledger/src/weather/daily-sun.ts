import { daysOfYear } from "./day-of-year.js";
import { extraterrestrialRadiationMJPerM2Day } from "./extraterrestrial-radiation.js";
import { dayLengthH, latitudeRad } from "./sun.js";

/** The sun of each day of a record; hours are local solar, noon at 12. */
export interface DailySun {
  readonly extraterrestrialMJPerM2: Float64Array;
  readonly dayLengthH: Float64Array;
  readonly sunriseH: Float64Array;
  readonly sunsetH: Float64Array;
}

/** @example dailySun("2025-12-21", 1, -33).dayLengthH[0] // 14.2 */
export function dailySun(startDate: string, days: number, latitudeDeg: number): DailySun {
  const ofYear = daysOfYear(startDate, days);
  const latitude = latitudeRad(latitudeDeg);
  const sun: DailySun = {
    extraterrestrialMJPerM2: new Float64Array(days),
    dayLengthH: new Float64Array(days),
    sunriseH: new Float64Array(days),
    sunsetH: new Float64Array(days),
  };
  const radiationOf = new Float64Array(367).fill(-1);
  const lengthOf = new Float64Array(367);
  for (let d = 0; d < days; d++) {
    const day = ofYear[d];
    if (radiationOf[day] < 0) {
      radiationOf[day] = extraterrestrialRadiationMJPerM2Day(latitude, day);
      lengthOf[day] = dayLengthH(latitude, day);
    }
    sun.extraterrestrialMJPerM2[d] = radiationOf[day];
    sun.dayLengthH[d] = lengthOf[day];
    sun.sunriseH[d] = 12 - lengthOf[day] / 2;
    sun.sunsetH[d] = 12 + lengthOf[day] / 2;
  }
  return sun;
}
