import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { simulate } from "rootledger";
import { parseMoisture } from "rootledger/calibrate";
import { parseDraws } from "rootledger/chance";
import { compare, scenarioOf } from "rootledger/compare";
import {
  type Comparison,
  everyPart,
  filesNamed,
  parseComparison,
  parseNeed,
  parsePlan,
  parseScenario,
  parseWeatherRecord,
  type Scenario,
} from "rootledger/scenario";
import { waterNeed } from "rootledger/tree";
import { describe, expect, test } from "vitest";
import { dataPath, dataText, demoFiles, demoJson } from "../../support/demo-files.js";
import { damagedText, mutatedJson } from "./mutated-json.js";

/** The playground's reader of lessons, by its path: its types belong to another project. */
const lessonReader = fileURLToPath(new URL("../../../playground/src/pages/class/lesson.ts", import.meta.url));
const { readLesson } = (await import(lessonReader)) as {
  readLesson: (file: string) => { ok: true } | { ok: false; faults: readonly object[] };
};

/** Runs of each kind; FUZZ_RUNS=10000 for a night. */
const runs = Number(process.env.FUZZ_RUNS ?? 150);
/** No one input may take longer, s; our choice, far above what they take. */
const mostS = 20;

interface Fault {
  readonly code: string;
  readonly path: string;
  readonly received: string;
  readonly rule: string;
}

/** Faults are listed ones: a code, what was received and a rule, each in one line, with nothing unfilled in it. */
function expectListed(faults: readonly Fault[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const { code, path, received, rule } of faults) {
    expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(rule).toMatch(/^[^\n]{4,600}$/);
    expect(rule).not.toMatch(/\$[a-z]|undefined|NaN|\[object/);
    expect(received.length + path.length).toBeGreaterThan(0);
  }
}

/** Whatever a run answers is a number. */
function expectFinite(scenario: Scenario): void {
  const short: Scenario = {
    ...scenario,
    season: { ...scenario.season, days: 1 },
    start: { ...scenario.start, kind: "same-state" },
  };
  const result = simulate(short, everyPart(short));
  for (const { id, values } of result.measures)
    for (const value of values) expect({ id, value, is: Number.isFinite(value) }).toEqual({ id, value, is: true });
  for (const fraction of result.ledger.residualFraction) expect(Math.abs(fraction)).toBeLessThan(1e-9);
}

/** An error of these kinds is a stated refusal of the library; anything else is a bug. */
const statedOr = (act: () => void): void => {
  try {
    act();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    expect(error.message).toMatch(/requires|must/);
  }
};

const within = (act: () => void): void => {
  const began = performance.now();
  act();
  expect((performance.now() - began) / 1000).toBeLessThan(mostS);
};

describe("JSON files with several values changed: refused with listed faults, or run", () => {
  const folder = (name: string): string[] =>
    readdirSync(dataPath(name)).flatMap((file) => (file.endsWith(".json") ? [`${name}/${file}`] : []));
  const comparisons = folder("demo").filter((name) => "soils" in JSON.parse(dataText(name)));

  test.each(["scenario", "young-trees"] as const)("scenario file %s", (name) => {
    const file = { ...demoJson(name), season: { startDate: "2025-12-01", days: 3 } };
    let accepted = 0;
    fc.assert(
      fc.property(mutatedJson(file), (input) => {
        within(() => {
          filesNamed(input);
          const parsed = parseScenario(input, demoFiles);
          if (!parsed.ok) return expectListed(parsed.faults);
          accepted++;
          statedOr(() => expectFinite(parsed.scenario));
        });
      }),
      { numRuns: runs },
    );
    // Enough of them say something that can be run for the rest to be tested too.
    expect(accepted / runs).toBeGreaterThan(0.03);
  });

  test.each(comparisons)("comparison file %s", (name) => {
    const file = JSON.parse(dataText(name));
    file.season.days = Math.min(file.season.days, 40);
    fc.assert(
      fc.property(mutatedJson(file), (input) => {
        within(() => {
          const parsed = parseComparison(input, demoFiles);
          if (!parsed.ok) expectListed(parsed.faults);
          else statedOr(() => runOneArm(parsed.comparison));
        });
      }),
      { numRuns: Math.ceil(runs / comparisons.length) },
    );
  });

  function runOneArm(comparison: Comparison): void {
    const [soil] = comparison.soils;
    const [programme] = comparison.programmes;
    if (soil !== undefined && programme !== undefined) expectFinite(scenarioOf(comparison, soil, programme));
  }

  test.each(["demo/need.json", "demo/need-young.json"])("need file %s", (name) => {
    fc.assert(
      fc.property(mutatedJson(JSON.parse(dataText(name))), (input) => {
        const parsed = parseNeed(input, demoFiles);
        if (!parsed.ok) return expectListed(parsed.faults);
        statedOr(() => {
          const { netLPerTree, grossLPerTree } = waterNeed(parsed.question);
          expect(Number.isFinite(netLPerTree) && Number.isFinite(grossLPerTree)).toBe(true);
        });
      }),
      { numRuns: runs },
    );
  });

  test("plan file", () => {
    fc.assert(
      fc.property(mutatedJson(JSON.parse(dataText("demo/plan.json"))), (input) => {
        const parsed = parsePlan(input);
        if (!parsed.ok) expectListed(parsed.faults);
      }),
      { numRuns: runs },
    );
  });

  test.each(folder("lessons"))("lesson file %s, whole and as damaged text", (name) => {
    const file = JSON.parse(dataText(name));
    const inText = fc.oneof(
      mutatedJson(file).map((json) => JSON.stringify(json)),
      damagedText(JSON.stringify(file, null, 1)),
      fc.string(),
    );
    fc.assert(
      fc.property(inText, (text) => {
        const read = readLesson(text);
        const said = read.ok ? ["read"] : read.faults.map((one) => JSON.stringify(one));
        expect(said.length).toBeGreaterThan(0);
        for (const one of said) expect(one).toMatch(/^\S[^\n]{2,}/);
      }),
      { numRuns: Math.ceil(runs / 4) },
    );
  });
});

describe("tables with damaged lines: refused with listed faults, or numbers all", () => {
  test("draws", () => {
    const table = "kcb,root-depth,k-sat\n0.9,50,1\n1.1,60,2.5\n1,40,0.5\n0.95,55,1e-1\n";
    const text = fc.oneof(
      damagedText(table),
      fc.string(),
      fc.string({ unit: "binary" }),
      fc.string().map((junk) => `${table}${junk}`),
    );
    fc.assert(
      fc.property(text, (given) => {
        const read = parseDraws(given);
        if (!read.ok) return expectListed(read.faults);
        expect(read.draws.values.length).toBe(read.members * read.draws.ids.length);
        expect(read.draws.values.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 20 * runs },
    );
  });

  test("soil-moisture readings", () => {
    const table =
      "time,depthCm,fromLineCm,theta\n2026-01-02T06:00,20,10,0.31\n2026-01-02T12:00,20,10,\n2026-01-03 06:00,40,0,0.28\n";
    const season = { startDate: "2026-01-01", days: 5 };
    fc.assert(
      fc.property(fc.oneof(damagedText(table), fc.string(), fc.string({ unit: "binary" })), (given) => {
        const read = parseMoisture(given, season);
        if (!read.ok) return expectListed(read.faults);
        for (const { hour, depthCm, theta } of read.readings)
          expect([hour, depthCm, theta].every(Number.isFinite)).toBe(true);
      }),
      // Once read as a number: a depth beyond what a double holds.
      { numRuns: 20 * runs, examples: [[table.replace(",20,", ",1e999,")]] },
    );
  });

  test("the weather file of a scenario and a longer record", () => {
    const whole = dataText("demo/weather.csv");
    const weather = whole.split("\n").slice(0, 60).join("\n");
    const file = { ...demoJson("scenario"), season: { startDate: whole.split("\n")[1]!.split(",")[0], days: 10 } };
    expect(parseScenario(file, { "weather.csv": weather }).ok).toBe(true);
    fc.assert(
      fc.property(fc.oneof(damagedText(weather), fc.string(), fc.string({ unit: "binary" })), (text) => {
        const parsed = parseScenario(file, { "weather.csv": text });
        const record = parseWeatherRecord(file, "record.csv", text);
        if (!record.ok) expectListed(record.faults);
        if (!parsed.ok) return expectListed(parsed.faults);
        const { et0Mm, rainMm } = parsed.scenario.weather;
        expect(et0Mm.every(Number.isFinite) && rainMm.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 3 * runs },
    );
  });
});

test("a comparison of what was accepted has finite differences", () => {
  const season = { startDate: "2025-12-01", days: 1 };
  const file = { ...demoJson("comparison"), season, start: { kind: "same-state", tensionKPa: 10 } };
  fc.assert(
    fc.property(mutatedJson(file), (input) => {
      const parsed = parseComparison(input, demoFiles);
      if (!parsed.ok || parsed.comparison.season.days > 3) return;
      statedOr(() => {
        const { differences } = compare(parsed.comparison);
        for (const { difference, floor } of differences) expect(Number.isFinite(difference) && floor >= 0).toBe(true);
      });
    }),
    { numRuns: Math.ceil(runs / 2) },
  );
});
