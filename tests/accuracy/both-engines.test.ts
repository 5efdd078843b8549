import { describe, expect, it } from "vitest";
import { engineErrors, type SoilGroup } from "../../packages/rootledger/src/compare/engine-errors.js";
import { bothEnginesCases, days, keptMeasures, runBucket } from "./both-engines-case.js";
import { changeErrors, groupOf, kept } from "./both-engines-errors.js";

const measured = changeErrors();

describe("both engines on the default class curves", () => {
  it("kept a finished, closed run of the slow engine for every case", () => {
    expect(kept.map((k) => k.id).sort()).toEqual(bothEnginesCases.map((c) => c.id).sort());
    for (const k of kept) {
      expect(Math.abs(k.residualFraction), k.id).toBeLessThan(1e-6);
      expect(Object.keys(k.richards).sort()).toEqual([...keptMeasures].sort());
    }
  });

  // The table feeds the verdicts' floors: it must cover what was measured and may not be padded.
  it.each(Object.keys(engineErrors) as SoilGroup[])("states the engine's errors in changes on %s soils", (group) => {
    for (const kind of ["interval", "pulses"] as const) {
      for (const [key, stated] of Object.entries(engineErrors[group][kind])) {
        const error = measured[group][kind][key as keyof (typeof measured)[SoilGroup]["interval"]];
        expect(error, `${group} ${kind} ${key}`).toBeLessThanOrEqual(stated);
        expect(stated, `${group} ${kind} ${key} is padded`).toBeLessThanOrEqual(Math.max(0.001, 1.1 * error + 0.001));
      }
    }
  });

  it("ranks programmes as Richards does wherever Richards' difference exceeds the stated error", () => {
    const theirs = new Map(kept.map((k) => [k.id, k.richards]));
    const stated = {
      "transpiration-ratio": ["uptake", 1],
      thirsty: ["thirstyTime", days * 24],
      airless: ["airlessTime", days * 24],
      "below-roots": ["drainage", 133 * days],
    } as const;
    let compared = 0;
    for (const from of bothEnginesCases) {
      for (const to of bothEnginesCases) {
        if (from.soil.name !== to.soil.name || from.flowLPerH !== to.flowLPerH || from.programme === to.programme)
          continue;
        const a = runsOf(from.id, theirs);
        const b = runsOf(to.id, theirs);
        const group = groupOf(from.soil.horizons);
        const kind = from.programme === "weekly" || to.programme === "weekly" ? "interval" : "pulses";
        for (const [id, [key, over]] of Object.entries(stated)) {
          const change = b.theirs[id] - a.theirs[id];
          if (Math.abs(change) <= engineErrors[group][kind][key] * over) continue;
          compared++;
          expect(Math.sign(b.ours[id] - a.ours[id]), `${from.id} to ${to.programme}: ${id}`).toBe(Math.sign(change));
        }
      }
    }
    expect(compared).toBeGreaterThan(100);
  });
});

const ours = new Map(bothEnginesCases.map((c) => [c.id, runBucket(c)]));

function runsOf(id: string, theirs: ReadonlyMap<string, Readonly<Record<string, number>>>) {
  const own = ours.get(id);
  const other = theirs.get(id);
  if (!own || !other) throw new Error(`no run of ${id}`);
  return { ours: own, theirs: other };
}
