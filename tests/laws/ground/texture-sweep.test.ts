import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { measure, type Result, simulate } from "rootledger";
import { floorOf } from "rootledger/compare";
import {
  classCurve,
  classCurveSets,
  classSet,
  type TextureClass,
  textureClasses,
  textureClassOf,
} from "rootledger/ground";
import { engineOf, type Scenario } from "rootledger/scenario";
import { afterAll, describe, expect, it } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const measures = [
  "thirsty",
  "airless",
  "below-roots-share",
  "evaporation",
  "transpiration-ratio",
  "window-low-point",
] as const;

const programmes = [calendar("weekly", 7, 1, 931), calendar("daily", 1, 1, 133), calendar("four pulses", 1, 4, 133)];

/** Classes that share a border in the triangle, found by walking it in steps of one percent. */
function neighbours(): ReadonlyMap<TextureClass, ReadonlySet<TextureClass>> {
  const found = new Map(textureClasses.map((name) => [name, new Set<TextureClass>()]));
  const at = (sand: number, clay: number): TextureClass =>
    textureClassOf({ sandFraction: sand / 100, clayFraction: clay / 100 });
  const join = (a: TextureClass, b: TextureClass): void => {
    if (a === b) return;
    found.get(a)?.add(b);
    found.get(b)?.add(a);
  };
  for (let sand = 0; sand < 100; sand++) {
    for (let clay = 0; sand + clay < 100; clay++) {
      join(at(sand, clay), at(sand + 1, clay));
      join(at(sand, clay), at(sand, clay + 1));
    }
  }
  return found;
}

/**
 * What the slow engine said of the classes that were asked about, kept as data since it takes minutes; written anew by
 * `SWEEP=write npm run vitest -- texture-sweep`. A class that is not there is run.
 */
const keptFile = fileURLToPath(new URL("./texture-sweep-slow.json", import.meta.url));
type Kept = Record<string, Partial<Record<TextureClass, Record<string, number>>>>;
const refereed: Kept = process.env.SWEEP === "write" ? {} : JSON.parse(readFileSync(keptFile, "utf8"));

function slowRun(fastScenario: Scenario): Record<string, number> {
  const scenario = { ...fastScenario, engine: "richards" } as const;
  const result = simulate(scenario, { engine: engineOf(scenario) });
  expect(result.status.kind).toBe("finished");
  return Object.fromEntries(measures.map((id) => [id, Number(measure(result, id).values[0]!.toPrecision(7))]));
}

afterAll(() => {
  if (process.env.SWEEP === "write") writeFileSync(keptFile, `${JSON.stringify(refereed, null, 2)}\n`);
});

describe("a sweep of all textures", () => {
  const touching = neighbours();
  /** The triangle's corners, between no two others. */
  const corners: readonly TextureClass[] = ["sand", "silt", "clay"];
  /** Our choice, no source: a tenth of what the measure spans from the least to the most class. */
  const spanShare = 0.1;

  it.each(programmes)("$name: no class stands apart from its neighbours in the triangle", (programme) => {
    const scenarios = new Map(
      textureClasses.map((texture) => [texture, scenarioWith({ texture, days: 28, programme, et0Mm: 6.2 })]),
    );
    const results = new Map(
      [...scenarios].map(([texture, scenario]): [TextureClass, Result] => [texture, simulate(scenario)]),
    );
    // Where the fast engine says that a class stands apart, the slow one decides, by the same bounds: this is about curves.
    const fast = (texture: TextureClass, id: string): number => measure(results.get(texture)!, id).values[0]!;
    const referee = (texture: TextureClass, id: string): number => {
      const known = refereed[programme.name] ?? {};
      refereed[programme.name] = known;
      known[texture] ??= slowRun(scenarios.get(texture)!);
      return known[texture][id]!;
    };
    const asked: string[] = [];
    for (const id of measures) {
      const all = textureClasses.map((texture) => fast(texture, id));
      const span = Math.max(...all) - Math.min(...all);
      console.log(programme.name, id, textureClasses.map((t, i) => `${t} ${all[i]!.toPrecision(3)}`).join(", "));
      for (const texture of textureClasses.filter((t) => !corners.includes(t))) {
        // Nothing below the floor of a verdict is a difference.
        const floor = floorOf(id, results.get(texture)!, scenarios.get(texture)!.soil, ["interval"], 0).size;
        const beyond = Math.max(spanShare * span, floor);
        const standing = (by: typeof fast) => {
          const around = [...touching.get(texture)!].map((t) => by(t, id));
          return { value: by(texture, id), low: Math.min(...around) - beyond, high: Math.max(...around) + beyond };
        };
        let { value, low, high } = standing(fast);
        if (value <= low || value >= high) {
          asked.push(`${id} in ${texture}`);
          ({ value, low, high } = standing(referee));
        }
        expect(value, `${id} in ${texture}`).toBeGreaterThan(low);
        expect(value, `${id} in ${texture}`).toBeLessThan(high);
      }
    }
    const heavier: readonly TextureClass[] = ["sand", "sandy loam", "loam", "clay loam", "clay"];
    heavier.slice(1).forEach((texture, i) => {
      const lighter = heavier[i]!;
      const apart = fast(texture, "airless") > fast(lighter, "airless");
      if (!apart) asked.push(`airless in ${texture} and ${lighter}`);
      const by = apart ? fast : referee;
      expect(by(texture, "airless"), `airless in ${texture}`).toBeGreaterThan(by(lighter, "airless"));
    });
    console.log(programme.name, "asked the slow engine:", asked.join(", ") || "nothing");
  });

  it("what is kept of the slow engine is what it says", () => {
    const [weekly] = programmes;
    const scenario = scenarioWith({ texture: "sandy clay", days: 28, programme: weekly!, et0Mm: 6.2 });
    const now = slowRun(scenario);
    const kept = refereed.weekly?.["sandy clay"];
    if (kept === undefined) throw new Error("the slow engine's weekly run on sandy clay is not kept");
    for (const id of measures)
      expect(Math.abs(now[id]! - kept[id]!), id).toBeLessThanOrEqual(1e-5 * Math.abs(kept[id]!));
  });

  it("every named set of class curves runs in a season; their spread is printed", () => {
    for (const texture of ["sand", "loam", "clay loam"] as const) {
      const answers = classCurveSets.map((curveSet) => {
        expect(classCurve(curveSet, texture)?.source).toBeTruthy();
        const other = curveSet === "default" ? undefined : classSet(curveSet, texture);
        const horizons = [
          { toCm: 100, texture, structure: "ordinary", ...(other === undefined ? {} : { classSet: other }) },
        ] as const;
        const result = simulate(scenarioWith({ horizons, days: 14, programme: programmes[1]!, et0Mm: 6.2 }));
        expect(result.status.kind, `${texture}, ${curveSet}`).toBe("finished");
        expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
        return measures.map((id) => measure(result, id).values[0]!);
      });
      measures.forEach((id, m) => {
        const values = answers.map((answer) => answer[m]!);
        console.log(
          `${texture}, ${id}: ${classCurveSets.map((s, i) => `${s} ${values[i]!.toPrecision(3)}`).join(", ")}`,
        );
      });
      expect(new Set(answers.map(String)).size, "sets that answer alike").toBe(classCurveSets.length);
    }
  });
});
