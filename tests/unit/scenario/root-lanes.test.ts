import { capillaryLengthCm, defaultSoilCurve, type TextureClass, textureGroup } from "rootledger/ground";
import { stripPondHalfWidthCm, wettedReachCm, woodingPondRadiusCm } from "rootledger/lines";
import { createSimulation } from "rootledger/scenario";
import { describe, expect, it, test } from "vitest";
import { calendar, scenarioWith } from "../../support/scenario.js";

const soilOf = (texture: TextureClass) => {
  const curve = defaultSoilCurve(texture);
  return { kSatCmPerH: curve.kSatCmPerH, alphaPerCm: 1 / capillaryLengthCm(curve, -1000) };
};

describe("wetted reach", () => {
  const textures: TextureClass[] = ["sand", "loamy sand", "sandy loam", "loam", "silt loam", "sandy clay loam"];
  textures.push("clay loam", "silty clay", "clay");

  // Keller & Bliesner (1990), Sprinkle and Trickle Irrigation, table 19.1, from memory: diameter wetted by one emitter of 4 L/h in
  // uniform soil with roots to 0.75 m. The table knows three groups of soil, so the mean of the group's classes is compared; 25 % is
  // half the step between the table's groups.
  test.each([
    ["coarse", 50],
    ["medium", 90],
    ["fine", 110],
  ] as const)("agrees with the handbook's diameter in %s soil, %s cm, within a quarter", (group, printedCm) => {
    const inGroup = textures.filter((texture) => textureGroup(texture) === group);
    const diameters = inGroup.map((texture) => 2 * wettedReachCm({ emitterFlowCm3PerH: 4000 }, soilOf(texture)));
    const mean = diameters.reduce((sum, cm) => sum + cm, 0) / diameters.length;
    expect(Math.abs(mean / printedCm - 1), diameters.join(", ")).toBeLessThan(0.25);
  });

  it("is the pond and one capillary length, the pond counted up to one capillary length", () => {
    const loam = soilOf("loam");
    const row = { emitterFlowCm3PerH: 4000, emitterSpacingCm: 40 };
    expect(stripPondHalfWidthCm(100, loam)).toBeGreaterThan(woodingPondRadiusCm(4000, loam));
    expect(wettedReachCm({ emitterFlowCm3PerH: 4000 }, loam)).toBeCloseTo(
      woodingPondRadiusCm(4000, loam) + 1 / loam.alphaPerCm,
      9,
    );
    expect(wettedReachCm(row, loam)).toBeCloseTo(2 / loam.alphaPerCm, 9);
  });
});

describe("roots of a mature tree follow the wetted lanes", () => {
  const sectionOf = (texture: "sand" | "loam" | "clay", change: object = {}) => {
    const scenario = scenarioWith({ texture, days: 1, roots: { lateral: { kind: "wetted-lanes" } }, ...change });
    return createSimulation(scenario).result().section;
  };
  const withRoots = (section: ReturnType<typeof sectionOf>) =>
    Array.from({ length: section.lanes }, (_, j) => section.rootShare[j]).filter((share) => share > 0).length;

  it("farther in clay than in sand, and says how far by what rule", () => {
    const [sand, loam, clay] = (["sand", "loam", "clay"] as const).map((texture) => sectionOf(texture));
    expect(withRoots(sand!)).toBeLessThan(withRoots(clay!));
    expect(sand!.rootsReason).toMatch(/within 19 cm of the lines/);
    expect(clay!.rootsReason).toMatch(/within 69 cm of the lines/);
    for (const section of [sand!, loam!, clay!]) {
      expect(section.rootShare.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      section.wetByLane.forEach((wet, j) => {
        expect(wet).toBeGreaterThanOrEqual(0);
        expect(wet).toBeLessThanOrEqual(1);
        expect(section.rootShare[j]! > 0, `lane ${j}`).toBe(wet > 0);
      });
    }
  });

  it("alike under every programme, also one with another emitter", () => {
    const daily = sectionOf("loam", { programme: calendar("daily", 1, 1, 110) });
    const other = { ...calendar("weekly", 7, 1, 770), emitterFlowLPerH: 4 };
    const weekly = sectionOf("loam", { programme: other });
    expect([...weekly.rootShare]).toEqual([...daily.rootShare]);
    expect(weekly.rootsReason).toBe(daily.rootsReason);
  });

  it("round each emitter where emitters stand far apart", () => {
    const section = sectionOf("sand", { pluggedPerTree: 16 });
    expect(section.geometry).toBe("ring");
    const reach = Number(/within (\d+) cm of the lines/.exec(section.rootsReason)?.[1]);
    const edge = [...section.laneEdgesCm].find((_, j) => section.rootShare[j] === 0);
    expect(edge).toBeGreaterThanOrEqual(reach);
    expect(section.rootShare.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});
