import { measure, simulate } from "rootledger";
import { seasonSolutes } from "rootledger/scenario";
import { concentrationFactor } from "rootledger/tree";
import { expect, test } from "vitest";
import { calendar, scenarioWith } from "../support/scenario.js";

/** Oster, Stottlmyer & Arpaia (2007), J. American Society for Horticultural Science 132(2): avocado on water of 0.7 dS/m had ECe of about 2. */
const trial = { waterEcDsPerM: 0.7, leastRatio: 2, mostRatio: 4 };
const days = 150;

test("a dry season of daily drip at 15 % leaching brings ECe over ECw into the band of a trial (Oster et al. 2007: 2 to 4)", () => {
  const scenario = scenarioWith({
    days,
    texture: "loam",
    et0Mm: 5,
    roots: { lateral: { kind: "along-lines", halfWidthCm: 30 } },
    salt: {
      waterEcDsPerM: trial.waterEcDsPerM,
      startEceDsPerM: 1.5 * trial.waterEcDsPerM,
      response: { kind: "threshold-slope", thresholdDsPerM: 1.3, slopePerDsPerM: 0.21 },
    },
    programme: calendar("daily", 1, 1, 115),
  });
  const result = simulate(scenario, { solutes: seasonSolutes, cells: { fromHour: days * 24 - 1, hours: 1 } });
  const of = (id: string): number => measure(result, id).values[0];
  expect(of("leaching-fraction")).toBeGreaterThan(0.1);
  expect(of("leaching-fraction")).toBeLessThan(0.2);
  for (const id of ["root-zone-ece", "root-zone-ece-end", "uptake-ece"]) {
    expect(of(id) / trial.waterEcDsPerM).toBeGreaterThan(trial.leastRatio);
    expect(of(id) / trial.waterEcDsPerM).toBeLessThan(trial.mostRatio);
  }
  // Ayers & Westcot (1985), FAO-29 table 3 at that leaching fraction is the mean of a whole root zone; drip leaves more at its fringe.
  expect(of("root-zone-ece-end") / trial.waterEcDsPerM).toBeGreaterThan(concentrationFactor(of("leaching-fraction")));
  // FAO-29: the soil water is about twice as salty as its saturation extract; band of our choice.
  const { rootShare, thetaSaturated } = result.section;
  let water = 0;
  rootShare.forEach((share, c) => {
    const ece = result.solutes?.cellEceDsPerM?.[c] ?? Number.NaN;
    water += (share * ece * thetaSaturated[c]) / (result.cells?.theta[c] ?? Number.NaN);
  });
  expect(water / of("root-zone-ece-end")).toBeGreaterThan(1.2);
  expect(water / of("root-zone-ece-end")).toBeLessThan(2.5);
});
