/**
 * Radiation of a day in the field's other units. Source: FAO-56 table 3 and Annex 1: 1 W/m2 over a day is 0.0864 MJ/m2,
 * 1 cal/cm2 is 0.041868 MJ/m2.
 */
export const mJPerM2DayPerWattPerM2 = 0.0864;
/** MJ/m2 in a calorie per square centimetre. */
export const mJPerM2PerCalPerCm2 = 0.041868;

/** @example solarFromWattsMJPerM2Day(290) // 25.1 */
export const solarFromWattsMJPerM2Day = (meanWattPerM2: number): number => meanWattPerM2 * mJPerM2DayPerWattPerM2;

/** @example solarFromCaloriesMJPerM2(600) // 25.1 */
export const solarFromCaloriesMJPerM2 = (calPerCm2: number): number => calPerCm2 * mJPerM2PerCalPerCm2;
