/**
 * Reference evapotranspiration by Hargreaves and Samani, mm/day: 0.0023 (Tmean + 17.8) sqrt(Tmax - Tmin) 0.408 Ra, Tmean being
 * the middle of Tmin and Tmax. Source: FAO-56 eq. 52 (Hargreaves and Samani 1985). Negative below -17.8 C: the caller decides.
 *
 * @example et0HargreavesSamaniMmPerDay({ tMinC: 14.8, tMaxC: 26.6, extraterrestrialMJPerM2Day: 40.55 }) // 5.0
 */
export function et0HargreavesSamaniMmPerDay(day: HargreavesDay): number {
  const meanC = (day.tMinC + day.tMaxC) / 2;
  return 0.0023 * (meanC + 17.8) * Math.sqrt(day.tMaxC - day.tMinC) * 0.408 * day.extraterrestrialMJPerM2Day;
}

/** What a day's ET0 is estimated from. */
export interface HargreavesDay {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly extraterrestrialMJPerM2Day: number;
}
