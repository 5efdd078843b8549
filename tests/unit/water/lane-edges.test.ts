import fc from "fast-check";
import { measure, simulate } from "rootledger";
import { everyPart } from "rootledger/scenario";
import { expect, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

test("no lane is a sliver, however many emitters are open and however far the rows are apart", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 18 }),
      fc.double({ min: 3, max: 9, noNaN: true }),
      (pluggedPerTree, rowSpacingM) => {
        const programme = calendar("daily", 1, 1, 60);
        const plain = scenarioWith({
          days: 1,
          pluggedPerTree,
          programme,
          roots: { lateral: { kind: "wetted-lanes" } },
        });
        const scenario = { ...plain, block: { ...plain.block, rowSpacingM } };
        const { section } = simulate(scenario, everyPart(scenario));
        const { laneEdgesCm } = section;
        for (let j = 1; j < laneEdgesCm.length; j++) expect(laneEdgesCm[j]! - laneEdgesCm[j - 1]!).toBeGreaterThan(1);
      },
    ),
    { numRuns: 40 },
  );
});

test("rings of a third of a metre move nitrogen as quickly as round ones", () => {
  const nitrogen = { waterMgPerL: 5, startKgPerHa: 10 };
  const run = (pluggedPerTree: number) => {
    const scenario = scenarioWith({ days: 2, pluggedPerTree, nitrogen, programme: calendar("daily", 1, 1, 60) });
    return simulate(scenario, everyPart(scenario));
  };
  // Nine open emitters stand 0.89 m apart, eight 1 m.
  for (const result of [run(11), run(12)]) {
    expect(result.section.geometry).toBe("ring");
    expect(result.status.kind).toBe("finished");
    expect(measure(result, "applied").values[0]).toBeCloseTo(120, 6);
  }
});
