// Speed of one season on four soils, in four pulses a day and in one run, and where the time goes: `npm run bench`, or with
// `-- --json`. Fixed inputs, nothing drawn by chance.
//   --repeats N   timed runs of each case, default 11
//   --days N      length of the season, default 180 (the budget is for 180)
import { Session } from "node:inspector/promises";
import { cpus, release, type } from "node:os";
import { parseArgs } from "node:util";
import { simulate } from "rootledger";
import { parseScenario } from "rootledger/scenario";

const { values: options } = parseArgs({
  options: {
    json: { type: "boolean", default: false },
    repeats: { type: "string", default: "11" },
    days: { type: "string", default: "180" },
  },
});
const repeats = wholeNumber("repeats", options.repeats);
const days = wholeNumber("days", options.days);

/** The season that the slider of a page has to redo while a finger is on it: own choice, no source. */
const budgetMs = 60;
const residualLimit = 1e-9;
const warmUps = 3;
const textures = ["sand", "loam", "clay loam", "clay"];
const programmes = {
  "four pulses": { pulses: 4, gapMinutes: 60 },
  "one run": { pulses: 1 },
};

/** A dry summer: ET0 on a sine between 3 and 7 mm a day, 12 mm of rain every 20 days. */
function weatherText() {
  const lines = ["date,et0Mm,rainMm"];
  for (let d = 0; d < days; d++) {
    const date = new Date(Date.UTC(2025, 9, 1 + d)).toISOString().slice(0, 10);
    lines.push(`${date},${(5 + 2 * Math.sin((Math.PI * d) / 180)).toFixed(2)},${d % 20 === 19 ? 12 : 0}`);
  }
  return lines.join("\n");
}

function scenarioOn(texture, programme) {
  const parsed = parseScenario(
    {
      format: 1,
      name: "bench",
      season: { startDate: "2025-10-01", days },
      block: {
        treeSpacingM: 4,
        rowSpacingM: 6,
        tree: { name: "avocado", canopyDiameterM: 4.6, kcb: [{ date: "2025-10-01", kcb: 0.8 }] },
        lines: { offsetsM: [-0.5, 0.5], emitterSpacingM: 0.4, emitterFlowLPerH: 1.6 },
      },
      weather: { name: "bench", file: "w.csv", latitudeDeg: -33, elevationM: 300, et0Method: "given" },
      soil: { name: texture, horizons: [{ toCm: 100, texture, structure: "ordinary" }] },
      programme: {
        name: `daily in ${programme}`,
        runs: [{ start: "06:00", everyDays: 1, ...programmes[programme], litresPerTree: 120 }],
      },
      start: { kind: "same-state", tensionKPa: 10 },
    },
    { "w.csv": weatherText() },
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.scenario;
}

const cases = Object.keys(programmes).flatMap((programme) =>
  textures.map((texture) => ({
    texture,
    programme,
    scenario: scenarioOn(texture, programme),
    timesMs: [],
    cpuMs: [],
    result: undefined,
  })),
);
let sink = 0;
// Rounds over all cases, so that a slow moment of the machine falls on each of them.
for (let round = -warmUps; round < repeats; round++) {
  for (const one of cases) {
    const beganCpu = process.cpuUsage();
    const began = performance.now();
    one.result = simulate(one.scenario);
    const tookMs = performance.now() - began;
    const { user, system } = process.cpuUsage(beganCpu);
    if (round >= 0) {
      one.timesMs.push(tookMs);
      one.cpuMs.push((user + system) / 1000);
    }
    sink += one.result.ledger.bottomCm3[0];
  }
}

/** Files of the library by what they do in a season; the rest is "other". */
const stages = {
  "flows over every face": ["water/bucket-flows"],
  "solution of the step": ["water/bucket-solve", "water/bucket-hold"],
  surface: ["water/bucket-surface", "water/cascade"],
  "stress, uptake, evaporation": ["water/stress", "water/uptake", "water/evaporation", "water/bucket-values"],
  "update and sums": ["water/bucket", "water/overfill"],
  "booking and forcing": ["scenario/", "programme/", "numeric/"],
  "soil tables": ["ground/", "water/ground", "water/boundary"],
};

/** Runs every case once more under the sampling profiler; share of the samples by stage. */
async function profile() {
  const session = new Session();
  session.connect();
  await session.post("Profiler.enable");
  await session.post("Profiler.setSamplingInterval", { interval: 200 });
  await session.post("Profiler.start");
  for (const { scenario } of cases) sink += simulate(scenario).ledger.bottomCm3[0];
  const { profile: taken } = await session.post("Profiler.stop");
  session.disconnect();
  const stageOf = new Map(taken.nodes.map(({ id, callFrame }) => [id, stageOfFrame(callFrame)]));
  const counts = Object.fromEntries([...Object.keys(stages), "garbage collection", "other"].map((name) => [name, 0]));
  for (const id of taken.samples) counts[stageOf.get(id)]++;
  return Object.entries(counts).map(([stage, count]) => ({ stage, share: count / taken.samples.length }));
}

function stageOfFrame({ functionName, url }) {
  if (functionName === "(garbage collector)") return "garbage collection";
  const file = /dist\/(.+)\.js$/.exec(url)?.[1] ?? "";
  const named = Object.entries(stages).find(([, files]) =>
    files.some((f) => (f.endsWith("/") ? file.startsWith(f) : file === f)),
  );
  return named?.[0] ?? "other";
}

const timeGoesTo = await profile();
const machine = {
  cpu: cpus()[0].model.trim(),
  cores: cpus().length,
  system: `${type()} ${release()}`,
  node: process.version,
};
const report = {
  machine,
  repeats,
  warmUps,
  days,
  spread: "from the lower to the upper quartile of the repeats",
  perSecondOf: "cell updates",
  sink,
  timeGoesTo,
  cases: cases.map(caseReport),
};
console.log(options.json ? JSON.stringify(report, null, 2) : table(report));

function caseReport({ texture, programme, timesMs, cpuMs, result }) {
  const sorted = timesMs.toSorted((a, b) => a - b);
  const medianMs = quantile(sorted, 0.5);
  const cells = result.section.layers * result.section.lanes;
  const residualFraction = Math.abs(result.ledger.residualFraction[0]);
  return {
    name: `season, ${days} d x ${cells} cells, daily in ${programme}, ${texture}`,
    medianMs,
    spreadMs: quantile(sorted, 0.75) - quantile(sorted, 0.25),
    lowestMs: sorted[0],
    medianCpuMs: quantile(
      cpuMs.toSorted((a, b) => a - b),
      0.5,
    ),
    perSecond: (result.subSteps * cells) / (medianMs / 1000),
    subSteps: result.subSteps,
    cells,
    residualFraction,
    budgetMs,
    pass: medianMs <= budgetMs && residualFraction <= residualLimit && result.status.kind === "finished",
  };
}

/** Linear between the ranks. */
function quantile(sorted, share) {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.ceil(at);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}

function table({ cases: rows }) {
  const head = `${machine.cpu}, ${machine.cores} cores, node ${machine.node}; ${repeats} repeats after ${warmUps} warm-ups`;
  const line = (cells) => cells.map((cell, i) => (i === 0 ? cell.padEnd(58) : cell.padStart(12))).join("");
  return [
    head,
    "spread: from the lower to the upper quartile; CPU ms: processor time of the median, where others share the cores",
    line(["", "median ms", "spread ms", "lowest ms", "CPU ms", "M cells/s", "residual", "budget ms", ""]),
    ...rows.map((r) =>
      line([
        r.name,
        r.medianMs.toFixed(1),
        r.spreadMs.toFixed(1),
        r.lowestMs.toFixed(1),
        r.medianCpuMs.toFixed(1),
        (r.perSecond / 1e6).toFixed(1),
        r.residualFraction.toExponential(1),
        String(r.budgetMs),
        r.pass ? "pass" : "OVER",
      ]),
    ),
    "where the time goes, all cases, by sampling (what the compiler puts into another function counts there):",
    ...timeGoesTo.map(({ stage, share }) => `  ${stage.padEnd(30)}${(share * 100).toFixed(0).padStart(3)} %`),
  ].join("\n");
}

function wholeNumber(name, text) {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1)
    throw new RangeError(`--${name} requires a whole number from 1: got ${text}`);
  return value;
}
