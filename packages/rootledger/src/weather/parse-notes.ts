import { type DailyWeather, type WeatherColumn, weatherColumns } from "./daily-weather.js";

const seldomMissed: readonly WeatherColumn[] = [
  "tMinC",
  "tMaxC",
  "rhMinPct",
  "rhMaxPct",
  "windMPerS",
  "solarMJPerM2",
  "sunshineH",
];

/** Few stations average more over a year; knots or km/h read as m/s do. Own choice. */
const windyMPerS = 8;
/** Wetter days occur in the tropics; elsewhere tenths of a millimetre or inches times ten are likelier. Own choice. */
const wetDayMm = 500;

/** Takes relative humidity above 100 % as 100 % and says so, then says what is missing and what looks odd. */
export function repairsAndNotes(weather: DailyWeather): string[] {
  const notes: string[] = [];
  for (const column of ["rhMinPct", "rhMaxPct"] as const) {
    let clipped = 0;
    for (let d = 0; d < weather.days; d++) {
      if (weather[column][d] > 100) {
        weather[column][d] = 100;
        clipped++;
      }
    }
    if (clipped > 0) notes.push(`${column}: above 100 on ${clipped} of ${weather.days} days, taken as 100`);
  }
  const et0Given = weather.et0Mm.some((value) => value >= 0);
  for (const column of weatherColumns) {
    if (!seldomMissed.includes(column) && !(column === "et0Mm" && et0Given)) continue;
    const missing = weather[column].reduce((count, value) => (Number.isNaN(value) ? count + 1 : count), 0);
    if (missing > 0) notes.push(`${column}: missing on ${missing} of ${weather.days} days`);
  }
  const wind = weather.windMPerS.filter((value) => value >= 0);
  const meanWind = wind.reduce((sum, value) => sum + value, 0) / wind.length;
  if (meanWind > windyMPerS)
    notes.push(`windMPerS: mean ${meanWind.toFixed(1)} m/s; check that it is not in km/h or knots`);
  const wettest = weather.rainMm.reduce((most, value) => Math.max(value, most), 0);
  if (wettest > wetDayMm) notes.push(`rainMm: ${wettest} mm on one day; check the unit`);
  return notes;
}
