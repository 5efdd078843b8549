import { column, simulate } from "rootledger";
import { parseScenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoJson } from "../../support/demo-files.js";

/** Three years of one and the same year, so that what differs between them is the tree and what lies under it. */
const first = Date.parse("2025-07-01");
const years = 3;
const days = 365 * years;
const rows = Array.from({ length: days }, (_, d) => {
  const season = -Math.cos((2 * Math.PI * (d % 365)) / 365);
  const rain = season < -0.3 && (d % 365) % 6 === 0 ? 9 : 0;
  const date = new Date(first + d * 86_400_000).toISOString().slice(0, 10);
  return `${date},${(12 + 4 * season).toFixed(1)},${(23 + 5 * season).toFixed(1)},45,85,2,${(17 + 8 * season).toFixed(1)},${rain}`;
});
const csv = `date,tMinC,tMaxC,rhMinPct,rhMaxPct,windMPerS,solarMJPerM2,rainMm\n${rows.join("\n")}\n`;

function threeYears(change: (file: ReturnType<typeof demoJson>) => void = () => {}) {
  const file = demoJson("young-trees");
  file.season = { startDate: "2025-07-01", days };
  file.start = { kind: "same-state" };
  change(file);
  const parsed = parseScenario(file, { "weather.csv": csv });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { scenario } = parsed;
  const result = simulate(scenario);
  const byYear = (name: string): number[] => {
    const { values } = column(result.days, name);
    return Array.from({ length: years }, (_, y) => values.slice(365 * y, 365 * (y + 1)).reduce((sum, v) => sum + v, 0));
  };
  return { scenario, result, byYear };
}

const rising = (values: readonly number[]): void => {
  for (let i = 1; i < values.length; i++) expect(values[i]).toBeGreaterThan(values[i - 1] ?? Number.NaN);
};

describe("a young orchard over three years of the same weather", () => {
  const { scenario, result, byYear } = threeYears();
  const { tree, surface } = scenario.block;
  const firstDays = [0, 1, 2].map((year) => 365 * year);

  it("runs, and its books close", () => {
    expect(result.status.kind).toBe("finished");
    expect(Math.abs(result.ledger.residualFraction[0] ?? 1)).toBeLessThan(1e-9);
  });

  it("grows its canopy as the tape of the preset does, from the canopy that was measured", () => {
    // Canopy by age of the avocado preset: 2.0 m at 2 years, 2.8 at 3, 3.5 at 4 on the line to 4.2 at 5; the block's canopy is 2 m at 2 years.
    const canopyM = tree.days?.canopyDiameterM ?? new Float64Array();
    firstDays.forEach((day, year) => {
      expect(canopyM[day]).toBeCloseTo([2, 2.8, 3.5][year] ?? 0, 2);
    });
    rising(firstDays.map((day) => canopyM[day + 180] ?? Number.NaN));
  });

  it("wants more water, and takes more, every year", () => {
    rising(byYear("wanted"));
    rising(byYear("transpired"));
  });

  it("lays a litter layer that thickens, cuts evaporation and holds more rain, both ways", () => {
    const { evaporationFactor, storageMm } = surface?.layer ?? { evaporationFactor: [], storageMm: [] };
    rising(firstDays.map((day) => storageMm[day] ?? Number.NaN));
    rising(firstDays.map((day) => -(evaporationFactor[day] ?? Number.NaN)));
    rising(byYear("heldByLayer"));
    rising(byYear("heldByCanopy"));
    rising(byYear("evaporated").map((litres) => -litres));
  });

  it("keeps one canopy where none is said to grow", () => {
    const same = threeYears((file) => {
      delete file.block.tree.growth;
    });
    const [one, two, three] = same.byYear("wanted");
    expect(two).toBeCloseTo(one ?? Number.NaN, 6);
    // The leap day of the third year moves the sun by a day.
    expect(Math.abs((three ?? Number.NaN) / (one ?? Number.NaN) - 1)).toBeLessThan(0.002);
  });
});
