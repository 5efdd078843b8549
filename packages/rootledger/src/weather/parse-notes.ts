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

/** Whether a column that is not there at all is worth a note: not beside ET0 of every day, nor radiation and sunshine beside each other. */
function isWanted(column: WeatherColumn, weather: DailyWeather): boolean {
  if (!seldomMissed.includes(column) || weather.et0Mm.every(Number.isFinite)) return false;
  const other = column === "sunshineH" ? "solarMJPerM2" : column === "solarMJPerM2" ? "sunshineH" : undefined;
  return other === undefined || weather[other].every(Number.isNaN);
}

/** Takes relative humidity above 100 % as 100 % and says so, then says what is missing and what looks odd. */
export function repairsAndNotes(weather: DailyWeather): string[] {
  const notes: string[] = [];
  for (const column of ["rhMinPct", "rhMaxPct", "rhMeanPct"] as const) {
    let clipped = 0;
    for (let d = 0; d < weather.days; d++) {
      if (weather[column][d] > 100) {
        weather[column][d] = 100;
        clipped++;
      }
    }
    if (clipped > 0) notes.push(`${column}: above 100 on ${clipped} of ${weather.days} days, taken as 100`);
  }
  for (const column of weatherColumns) {
    if (weather[column].every(Number.isNaN) && !isWanted(column, weather)) continue;
    const missing = weather[column].reduce((count, value) => (Number.isNaN(value) ? count + 1 : count), 0);
    if (missing > 0) notes.push(`${column}: missing on ${missing} of ${weather.days} days`);
  }
  const wind = weather.windMPerS.filter((value) => value >= 0);
  const meanWind = wind.reduce((sum, value) => sum + value, 0) / wind.length;
  if (meanWind > windyMPerS)
    notes.push(`windMPerS: mean ${meanWind.toFixed(1)} m/s; check that it is not in km/h or knots`);
  return notes;
}
