// Runs the default class curves through both engines and keeps the outcome in cases/default-curves.json.
// On demand only (about an hour of one core): node tests/accuracy/default-curves.mjs, after a build. Runs already in the file
// are kept, so it can be stopped and started again.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { measure, simulate } from "rootledger";
import { parseScenario } from "rootledger/scenario";
import { refinedRichardsEngine } from "rootledger/water";

const days = 14;
const file = process.argv[2] ?? new URL("cases/default-curves.json", import.meta.url);
const kept = [
  "transpiration-ratio",
  "thirsty",
  "airless",
  "thirsty-severity",
  "airless-severity",
  "below-roots",
  "evaporation",
  "runoff",
  "window-low-point",
  "storage-change",
  "applied",
];

const textures = [
  "sand",
  "loamy sand",
  "sandy loam",
  "loam",
  "silt loam",
  "silt",
  "sandy clay loam",
  "clay loam",
  "silty clay loam",
  "sandy clay",
  "silty clay",
  "clay",
];
const programmes = {
  weekly: { everyDays: 7, pulses: 1 },
  daily: { everyDays: 1, pulses: 1 },
  "four pulses": { everyDays: 1, pulses: 4 },
};
const uniform = (texture, structure = "ordinary") => ({
  name: structure === "ordinary" ? texture : `${structure} ${texture}`,
  horizons: [{ toCm: 100, texture, structure }],
});
const over = (top, below) => ({
  name: `${top} over ${below}`,
  horizons: [
    { toCm: 30, texture: top, structure: "ordinary" },
    { toCm: 100, texture: below, structure: "ordinary" },
  ],
});
const soils = [
  ...textures.map((t) => uniform(t)),
  uniform("clay", "crumbly"),
  uniform("clay", "tight"),
  uniform("clay loam", "crumbly"),
  over("sandy loam", "clay"),
  over("clay loam", "sand"),
];
const wanted = [];
for (const soil of soils)
  for (const programme of Object.keys(programmes)) wanted.push({ soil, programme, flowLPerH: 1.6 });
for (const texture of ["sand", "loam", "clay loam"])
  for (const programme of ["daily", "four pulses"]) wanted.push({ soil: uniform(texture), programme, flowLPerH: 0.8 });

const done = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : { cases: [] };
const result = {
  provenance:
    "Both engines of this project on its default class curves: block 6 x 4 m, two lines at 0.5 m, 20 emitters a tree, 133 L per tree and day, ET0 6.2 mm, Kcb 0.8, no rain, 14 days from 10 kPa. Richards on the referee's grid. Not outside truth: it says how far the fast engine is from the slow one.",
  days,
  cases: done.cases,
};
for (const { soil, programme, flowLPerH } of wanted) {
  const id = `${soil.name}, ${programme}, ${flowLPerH} L/h`;
  if (result.cases.some((c) => c.id === id)) continue;
  const scenario = scenarioOf(soil, programme, flowLPerH);
  const began = Date.now();
  const richards = simulate(scenario, { engine: refinedRichardsEngine });
  if (richards.status.kind !== "finished") console.error(`${id}: ${JSON.stringify(richards.status)}`);
  result.cases.push({
    id,
    soil,
    programme,
    flowLPerH,
    status: richards.status.kind,
    residualFraction: richards.ledger.residualFraction[0],
    richards: Object.fromEntries(kept.map((name) => [name, Number(measure(richards, name).values[0].toPrecision(7))])),
  });
  console.error(`${id}: ${((Date.now() - began) / 1000).toFixed(0)} s`);
  writeFileSync(file, `${JSON.stringify(result, null, 1)}\n`);
}

function scenarioOf(soil, programme, flowLPerH) {
  const { everyDays, pulses } = programmes[programme];
  const rows = Array.from({ length: days }, (_, d) => `2025-12-${String(d + 1).padStart(2, "0")},6.2,0`);
  const parsed = parseScenario(
    {
      format: 1,
      name: "default curves",
      season: { startDate: "2025-12-01", days },
      block: {
        treeSpacingM: 4,
        rowSpacingM: 6,
        tree: { name: "avocado", canopyDiameterM: 4.6, kcb: [{ date: "2025-12-01", kcb: 0.8 }] },
        lines: { offsetsM: [-0.5, 0.5], emitterSpacingM: 0.4, emitterFlowLPerH: flowLPerH },
      },
      soil,
      weather: {
        name: "constant",
        file: "weather.csv",
        latitudeDeg: -33,
        elevationM: 300,
        windHeightM: 2,
        et0Method: "given",
      },
      programme: {
        name: programme,
        runs: [
          {
            start: "06:00",
            everyDays,
            firstDay: 0,
            pulses,
            ...(pulses > 1 ? { gapMinutes: 60 } : {}),
            litresPerTree: 133 * everyDays,
          },
        ],
      },
      start: { kind: "same-state", tensionKPa: 10 },
    },
    { "weather.csv": `date,et0Mm,rainMm\n${rows.join("\n")}\n` },
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults, null, 1));
  return parsed.scenario;
}
