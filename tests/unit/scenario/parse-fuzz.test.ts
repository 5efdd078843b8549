import fc from "fast-check";
import { createSimulation } from "rootledger";
import { textureClasses } from "rootledger/ground";
import { filesNamed, parseComparison, parseScenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson } from "../../support/demo-files.js";

/** Every place in a JSON value, as a list of keys. */
function places(value: unknown, at: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [at];
  const keys = Array.isArray(value) ? value.keys() : Object.keys(value);
  return [at, ...[...keys].flatMap((key) => places((value as Record<string | number, unknown>)[key], [...at, key]))];
}

function withValue(file: object, at: readonly (string | number)[], value: unknown): unknown {
  if (at.length === 0) return value;
  const copy = structuredClone(file) as Record<string | number, unknown>;
  let place = copy;
  for (const key of at.slice(0, -1)) place = place[key] as Record<string | number, unknown>;
  const last = at[at.length - 1] ?? "";
  if (value === undefined) delete place[last];
  else place[last] = value;
  return copy;
}

const oneLine = (text: string): boolean => !text.includes("\n") && text.length < 400;

function expectFaults(parsed: ReturnType<typeof parseScenario> | ReturnType<typeof parseComparison>): void {
  if (parsed.ok) return;
  expect(parsed.faults.length).toBeGreaterThan(0);
  for (const fault of parsed.faults) {
    expect(fault.code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(fault.rule).not.toMatch(/\$|undefined|NaN/);
    expect(oneLine(fault.received) && oneLine(fault.rule)).toBe(true);
  }
}

describe("reading never throws", () => {
  it("on any value at all", () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }),
        (input) => {
          expectFaults(parseScenario(input, demoFiles));
          expectFaults(parseComparison(input, demoFiles));
          filesNamed(input);
        },
      ),
      { numRuns: 150 },
    );
  });

  it.each(["scenario", "comparison"] as const)("on a %s file with any one value replaced or removed", (kind) => {
    const file = demoJson(kind);
    file.season.days = 14;
    const parse = kind === "scenario" ? parseScenario : parseComparison;
    const at = fc.constantFrom(...places(file));
    const strange = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom(undefined, Number.NaN, Number.POSITIVE_INFINITY, -0, "__proto__", 1e308, [], {}),
    );
    fc.assert(
      fc.property(at, strange, (place, value) => expectFaults(parse(withValue(file, place, value), demoFiles))),
      { numRuns: 150 },
    );
  });

  it("on any weather text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => expectFaults(parseScenario(demoJson("scenario"), { "weather.csv": text }))),
      { numRuns: 100 },
    );
  });
});

describe("what is accepted can be run", () => {
  const pair = fc.double({ min: 0.04, max: 1.4, noNaN: true }).map((m) => [-m, m]);
  const scenario = fc.record({
    offsetsM: fc.oneof(
      fc.constant([0]),
      pair,
      pair.map((p) => [...p, 0]),
    ),
    emitterSpacingM: fc.double({ min: 0.1, max: 2, noNaN: true }),
    emitterFlowLPerH: fc.double({ min: 0.3, max: 10, noNaN: true }),
    depthCm: fc.double({ min: 5, max: 150, noNaN: true }),
    topShare: fc.double({ min: 0.05, max: 0.99, noNaN: true }),
    horizons: fc.array(
      fc.record({
        toCm: fc.double({ min: 1, max: 200, noNaN: true }),
        texture: fc.constantFrom(...textureClasses),
        structure: fc.constantFrom("tight", "ordinary", "crumbly"),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    runs: fc.array(
      fc.record({
        start: fc.constantFrom("00:00", "06:00", "13:30", "23:59"),
        everyDays: fc.integer({ min: 1, max: 9 }),
        firstDay: fc.integer({ min: 0, max: 6 }),
        pulses: fc.integer({ min: 1, max: 6 }),
        gapMinutes: fc.integer({ min: 0, max: 180 }),
        litresPerTree: fc.double({ min: 0.5, max: 300, noNaN: true }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    tensionKPa: fc.double({ min: 0.1, max: 1500, noNaN: true }),
  });

  it("createSimulation takes every scenario that parseScenario takes", () => {
    let accepted = 0;
    fc.assert(
      fc.property(scenario, (some) => {
        const file = demoJson("scenario");
        file.season.days = 7;
        file.block.lines = {
          offsetsM: some.offsetsM,
          emitterSpacingM: some.emitterSpacingM,
          emitterFlowLPerH: some.emitterFlowLPerH,
        };
        file.block.tree.roots = { depthCm: some.depthCm, topShare: some.topShare };
        file.soil.horizons = [...some.horizons].sort((a, b) => a.toCm - b.toCm);
        file.programme.runs = some.runs;
        file.start = { kind: "same-state", tensionKPa: some.tensionKPa };
        const parsed = parseScenario(file, demoFiles);
        expectFaults(parsed);
        if (!parsed.ok) return;
        accepted++;
        const simulation = createSimulation(parsed.scenario);
        simulation.step();
        expect(simulation.result().ledger.residualFraction[0]).toBeLessThan(1e-9);
      }),
      { numRuns: 150 },
    );
    expect(accepted, "the generator must not only make faulty files").toBeGreaterThan(15);
  });
});
