/** On how many days each missing-data rule or limit was used. */
export interface Et0Counts {
  dewPointAsTMin: number;
  rhMaxOnly: number;
  rhMeanOnly: number;
  rhAbove100: number;
  aboveSaturation: number;
  windAssumed: number;
  windRaised: number;
  solarFromSunshine: number;
  solarFromTemperature: number;
  sunshineBeyondDay: number;
  solarHeldAtClearSky: number;
  solarAboveClearSky: number;
  thickCloud: number;
  polarNight: number;
  et0Floored: number;
}

/** @example noCounts().windAssumed // 0 */
export const noCounts = (): Et0Counts => ({
  dewPointAsTMin: 0,
  rhMaxOnly: 0,
  rhMeanOnly: 0,
  rhAbove100: 0,
  aboveSaturation: 0,
  windAssumed: 0,
  windRaised: 0,
  solarFromSunshine: 0,
  solarFromTemperature: 0,
  sunshineBeyondDay: 0,
  solarHeldAtClearSky: 0,
  solarAboveClearSky: 0,
  thickCloud: 0,
  polarNight: 0,
  et0Floored: 0,
});

const wording: Readonly<Record<keyof Et0Counts, string>> = {
  dewPointAsTMin: "humidity missing: dew point taken as Tmin (FAO-56 eq. 48)",
  rhMaxOnly: "only the highest humidity given: vapour pressure from Tmin and RHmax (FAO-56 eq. 18)",
  rhMeanOnly: "only the mean humidity given: vapour pressure from RHmean (FAO-56 eq. 19)",
  rhAbove100: "relative humidity above 100 % taken as 100 %",
  aboveSaturation: "vapour pressure above saturation (dew point too high) taken as saturation",
  windAssumed: "wind missing: 2 m/s at 2 m height assumed (FAO-56 ch. 3)",
  windRaised: "wind at 2 m below 0.5 m/s taken as 0.5 m/s (FAO-56 ch. 3)",
  solarFromSunshine: "solar radiation from sunshine hours, as 0.25 and bs 0.50 (FAO-56 eq. 35)",
  solarFromTemperature: "radiation and sunshine missing: solar radiation from the temperature range (FAO-56 eq. 50)",
  sunshineBeyondDay: "sunshine longer than the day taken as the whole day",
  solarHeldAtClearSky: "solar radiation from the temperature range held at that of a clear sky (FAO-56 eq. 37)",
  solarAboveClearSky: "measured solar radiation more than 5 % above a clear sky, used as measured",
  thickCloud: "cloud term of net longwave radiation held at 0.05 (ASCE-EWRI 2005 eq. 18)",
  polarNight: "no sun: half-clouded sky assumed for net longwave radiation (FAO-56 ch. 4, hourly step)",
  et0Floored: "negative reference evapotranspiration taken as 0",
};

/** Sentences for the counts that are not 0. @example et0Notes(noCounts(), 30) // [] */
export function et0Notes(counts: Et0Counts, days: number): string[] {
  const notes: string[] = [];
  for (const key of Object.keys(wording) as (keyof Et0Counts)[]) {
    if (counts[key] > 0) notes.push(`${wording[key]}: ${counts[key]} of ${days} days`);
  }
  return notes;
}
