import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { main } from "@rootledger/cli";
import { measure, simulate, version } from "rootledger";
import { sensorTraces } from "rootledger/advise";
import {
  type DrawSource,
  defaultPriors,
  drawMaker,
  type EnsemblePlan,
  ensemble,
  fieldCapacityPrior,
  memberRun,
  oneThread,
  quantileOf,
  type UnknownId,
} from "rootledger/chance";
import { type Comparison, defaults, inputsKey, parseScenario } from "rootledger/scenario";
import { stepModel } from "rootledger/steps";
import { expect, test } from "vitest";
import { dataPath, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";
import { calendar, scenarioWith } from "../support/scenario.js";

/*
 * What a researcher does with the library, step by step. Installing the tarball, its README and its guides: package.test.ts. Three
 * public checks: published/need-cards (an irrigation card), published-checks (how often to water citrus by two drippers), two-cells-by-hand.
 * Own loop, hourly demand, uptake, curve: laws/steps and unit/steps. Halved steps and layers: unit/compare/convergence. Workers, shards
 * and memory: unit/chance, cli, bench. A member that fails: unit/chance/ensemble. Here is what is left.
 */

const root = fileURLToPath(new URL("../../packages/rootledger/", import.meta.url));
const shipped = (name: string): string => readFileSync(`${root}${name}`, "utf8");
const { soil, programme: _, ...common } = scenarioWith({ days: 4, texture: "clay" });
const comparison: Comparison = {
  ...common,
  remark: "",
  soils: [soil],
  programmes: [calendar("long", 1, 1, 110), calendar("four pulses", 1, 4, 110)],
};

test("the model note has state, units, order, equations and limits, and every default with its source as the code has it", () => {
  const note = shipped("docs/model.md");
  for (const part of ["State", "Units", "Order of an hour", "One sub-step", "Equations", "Books", "Known limits"]) {
    expect(note).toMatch(new RegExp(`^## ${part}`, "m"));
  }
  for (const [name, { value, source, published }] of Object.entries(defaults)) {
    expect(note).toContain(`| \`${name}\` | ${value} | ${source} | ${published} |`);
  }
});

test("priors cover what is in doubt, in stated units with a source; draws may be correlated, or an array of one's own", () => {
  const priors = defaultPriors(comparison);
  const spread = (id: UnknownId) => {
    const prior = priors.unknowns.find((one) => one.id === id);
    if (prior === undefined) throw new Error(`spread requires a prior of ${id}`);
    expect(prior.source).not.toBe("");
    return [0, 1].map((share) => quantileOf(prior.spread, share)) as [number, number];
  };
  // Air limit 0.10 to 0.20 and air-return 3 to 8 kPa: the bands of the sources that the priors name.
  const [airLow, airHigh] = spread("air-limit");
  expect(airLow).toBeLessThanOrEqual(0.1);
  expect(airHigh).toBeGreaterThanOrEqual(0.2);
  const [backLow, backHigh] = spread("air-return");
  expect(backLow).toBeLessThanOrEqual(3);
  expect(backHigh).toBeGreaterThanOrEqual(8);
  for (const id of ["root-depth", "k-sat", "root-width", "uniformity", "kcb"] as const) {
    const [low, high] = spread(id);
    expect(low).toBeLessThan(high);
  }
  expect(fieldCapacityPrior.id).toBe("field-capacity");
  const both: UnknownId[] = ["k-sat", "kcb"];
  const unknowns = priors.unknowns.filter(({ id }) => both.includes(id));
  const draws = drawMaker({
    kind: "priors",
    priors: { unknowns, correlations: [{ a: "k-sat", b: "kcb", r: 0.9 }] },
    seed: 1,
  });
  const rows = Array.from({ length: 400 }, (__, member) => draws(member).values);
  const same = rows.filter(([kSat = 0, kcb = 0]) => kSat > 1 === kcb > 1).length;
  // Share of concordant signs of two normals correlated by 0.9: 1/2 + arcsin(0.9)/pi = 0.856 (Sheppard 1899, from memory).
  expect(same / 400).toBeGreaterThan(0.8);
  expect(same / 400).toBeLessThan(0.91);
  const own: DrawSource = { kind: "own", ids: both, values: Float64Array.of(0.8, 1, 1.2, 0.9) };
  expect(drawMaker(own)(1)).toEqual({ member: 1, ids: both, values: Float64Array.of(1.2, 0.9) });
});

test("an ensemble says in what share of paired draws pulses rise or fall, by how much, with its seed and version", async () => {
  const draws: DrawSource = { kind: "priors", priors: defaultPriors(comparison), seed: "paired" };
  const plan: EnsemblePlan = { comparison, trees: ["mean"], draws, weatherYears: [] };
  const result = await ensemble(plan, { members: 8, executor: oneThread(memberRun(plan)) });
  expect(result).toMatchObject({ version, finished: 8, draws: { seed: "paired" } });
  const airless = result.differences.find(({ measureId }) => measureId === "airless");
  expect(airless).toMatchObject({ from: "long", to: "four pulses", unit: "root-h" });
  for (const share of [airless?.risesShare, airless?.fallsShare]) {
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThanOrEqual(1);
  }
  expect(airless?.low).toBeLessThanOrEqual(airless?.high ?? Number.NaN);
});

test("results are arrays with unit and kind; the whole answer has version, key of the inputs and the defaults with their sources", async () => {
  const result = simulate(scenarioWith({ days: 2 }));
  for (const { unit, kind, values } of [...result.days.columns, ...result.hours.columns]) {
    expect(unit).not.toBe("");
    expect(["state", "flux", "sum"]).toContain(kind);
    expect(values).toBeInstanceOf(Float64Array);
  }
  expect(measure(result, "airless").unit).toBe("root-h");
  const path = dataPath("demo/comparison.json");
  const file = demoJson("comparison");
  const short = { ...file, season: { ...file.season, days: 3 }, start: { kind: "same-state" } };
  const { io, written } = memoryIo({ [path]: JSON.stringify(short) });
  expect(await main(["compare", path, "--json"], io)).toBe(0);
  const answer = JSON.parse(written.stdout);
  expect(answer.version).toBe(version);
  expect(answer.inputsKey).toMatch(/^[0-9a-f]{16}$/);
  expect(answer.defaultsUsed[0]).toMatchObject({ path: expect.any(String), source: expect.any(String) });
});

test("the key of the inputs follows every input and nothing else", () => {
  const scenario = scenarioWith({ days: 2 });
  expect(inputsKey(scenarioWith({ days: 2 }))).toBe(inputsKey(scenario));
  const rained = scenarioWith({ days: 2, rainMm: [0, 0.1] });
  expect(inputsKey(rained)).not.toBe(inputsKey(scenario));
});

test("the loop of one's own and the season's sensor twin read a state by the same operator", () => {
  const scenario = scenarioWith({ days: 1, texture: "clay loam" });
  const place = { depthCm: 15, fromLineCm: 10 };
  const result = simulate(scenario, { cells: { fromHour: 0, hours: 24 } });
  const [trace] = sensorTraces(scenario, { places: [place], fromHour: 0, hours: 24 });
  const model = stepModel(scenario);
  const start = model.initial();
  for (const hour of [0, 7, 23]) {
    const cells = model.grid.cells;
    const theta = Array.from(result.cells?.theta.subarray(hour * cells, (hour + 1) * cells) ?? []);
    const read = model.observe({ ...start, water: { timeH: hour + 1, theta } }, place);
    expect(read).toEqual({ theta: trace?.theta[hour], tensionKPa: trace?.tensionKPa[hour] });
  }
});

/** The case that the changelog describes, by programme and texture. */
function changelogCase(texture: string, run: object) {
  const days = Array.from({ length: 60 }, (_, d) => {
    const date = new Date(Date.UTC(2026, 0, 1 + d)).toISOString().slice(0, 10);
    return `${date},6.2,${d % 13 === 6 ? 12 : 0}`;
  });
  const tree = { name: "avocado", canopyDiameterM: 4.6, kcb: [{ date: "2026-01-01", kcb: 0.8 }] };
  const lines = { offsetsM: [-0.5, 0.5], emitterSpacingM: 0.4, emitterFlowLPerH: 1.6 };
  const weather = { name: "days", file: "d.csv", latitudeDeg: -33, elevationM: 320, et0Method: "given" };
  const parsed = parseScenario(
    {
      format: 1,
      name: "A block",
      season: { startDate: "2026-01-01", days: 60 },
      block: { treeSpacingM: 4, rowSpacingM: 6, tree, lines },
      soil: { name: texture, horizons: [{ toCm: 100, texture }] },
      weather,
      programme: { name: "runs", runs: [{ start: "06:00", ...run }] },
    },
    { "d.csv": ["date,et0Mm,rainMm", ...days].join("\n") },
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return simulate(parsed.scenario);
}

// No check of the model: who moves a default result must write it into the changelog, or this fails.
test("the last line of the changelog's table is what this version computes", () => {
  const last = shipped("CHANGELOG.md")
    .match(/^\| (?!after|---).*\|$/gm)
    ?.at(-1);
  const runs = [
    { everyDays: 7, litresPerTree: 931 },
    { everyDays: 1, litresPerTree: 133 },
    { everyDays: 1, litresPerTree: 133, pulses: 4, gapMinutes: 60 },
  ];
  const computed = ["clay", "sand"].flatMap((texture) =>
    runs.map((run) => {
      const result = changelogCase(texture, run);
      const ids = ["thirsty", "airless", "below-roots", "transpiration"] as const;
      return ids.map((id) => Math.round(measure(result, id).values[0] ?? Number.NaN)).join("/");
    }),
  );
  expect(last?.split("|").slice(2, -1)).toEqual(computed.map((cell) => ` ${cell} `));
});

test("changelog and citation file carry the version that results carry", () => {
  expect(shipped("CHANGELOG.md")).toMatch(new RegExp(`^## ${version.replaceAll(".", "\\.")}`, "m"));
  expect(shipped("CITATION.cff")).toContain(`version: ${version}\n`);
  expect(shipped("README.md")).toMatch(/CITATION\.cff/);
});
