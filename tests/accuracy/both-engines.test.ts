import { describe, expect, it } from "vitest";
import { engineErrors, type SoilGroup } from "../../packages/rootledger/src/compare/engine-errors.js";
import { bothEnginesCases, keptMeasures } from "./both-engines-case.js";
import { changeErrors, kept } from "./both-engines-errors.js";

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
});
