// Writes the invented weather of the invented station "Valle Almagra" (see WEATHER.md beside it) to standard output:
//   node data/demo/make-weather.mjs > data/demo/weather.csv
// Nothing here is measured. Every number is a choice that makes a plausible dry summer at about 33 degrees south.
import seedrandom from "seedrandom";

const random = seedrandom.alea("valle-almagra:2025");

const days = 210;
const firstDay = Date.UTC(2025, 9, 1);
const dayLengthMs = 86_400_000;

/** Days since 1 October. */
const summerSolstice = 81;
const warmestDay = 105;
const heatWave = { from: 102, days: 7, rise: 6 };
const rains = new Map([
  [4, 6.2],
  [5, 2.4],
  [17, 3.8],
  [38, 11.5],
  [39, 17.2],
  [40, 8.9],
  [41, 2.4],
  [66, 1.6],
  [124, 4.4],
  [168, 7.8],
  [183, 3.2],
  [196, 14.6],
  [197, 5.4],
]);

const season = (day, peak) => Math.cos((2 * Math.PI * (day - peak)) / 365);
const spread = () => random() + random() + random() - 1.5;
const round = (value, digits) => Number(value.toFixed(digits));

const lines = ["date,tMinC,tMaxC,rhMinPct,rhMaxPct,windMPerS,solarMJPerM2,rainMm"];
let warmth = 0;
let cloud = 0.06;
for (let day = 0; day < days; day++) {
  const rainMm = rains.get(day) ?? 0;
  const tomorrowWet = rains.has(day + 1);
  const wet = rainMm > 0;
  warmth = 0.7 * warmth + 2.2 * spread();
  cloud = wet ? 0.45 + 0.25 * random() : tomorrowWet ? 0.25 + 0.15 * random() : 0.02 + 0.13 * random() * random() + 0.3 * cloud * random();
  const inHeat = day >= heatWave.from && day < heatWave.from + heatWave.days;
  const heat = inHeat ? heatWave.rise : 0;
  const tMaxC = 24.2 + 5.6 * season(day, warmestDay) + warmth + heat - (wet ? 6 : 0) + 0.6 * spread();
  const tMinC = 10.2 + 3.6 * season(day, warmestDay) + 0.5 * warmth + 0.45 * heat + (wet ? 1.5 : 0) + 1.4 * spread();
  const rhMaxPct = Math.min(98, 86 + (wet ? 9 : 0) - (inHeat ? 12 : 0) + 5 * spread());
  const rhMinPct = Math.min(rhMaxPct - 10, 39 + (wet ? 24 : 0) - (inHeat ? 10 : 0) + 0.5 * (24 - tMaxC) + 4 * spread());
  const windMPerS = Math.max(0.6, 1.9 + 0.3 * season(day, summerSolstice) + 0.7 * spread());
  const solarMJPerM2 = (23.4 + 8.4 * season(day, summerSolstice)) * (1 - cloud);
  const date = new Date(firstDay + day * dayLengthMs).toISOString().slice(0, 10);
  lines.push(
    [
      date,
      round(tMinC, 1),
      round(tMaxC, 1),
      round(rhMinPct, 0),
      round(rhMaxPct, 0),
      round(windMPerS, 1),
      round(solarMJPerM2, 1),
      rainMm,
    ].join(","),
  );
}
process.stdout.write(`${lines.join("\n")}\n`);
