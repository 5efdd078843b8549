import { parseComparison, parseScenario, scenarioJsonSchema } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

const parsedWith = (surface: Editable, more: (file: Editable) => void = () => {}) => {
  const file = demoJson("scenario");
  file.block.surface = surface;
  more(file);
  return parseScenario(file, demoFiles);
};

const surfaceOf = (surface: Editable) => {
  const parsed = parsedWith(surface);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return { ...parsed, surface: parsed.scenario.block.surface };
};

describe("block.surface", () => {
  it("is left out of a scenario that does not name it", () => {
    const parsed = parseScenario(demoJson("scenario"), demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.scenario.block.surface).toBeUndefined();
  });

  it("lists what it fills in with its source", () => {
    const { defaultsUsed, surface } = surfaceOf({ layer: { kind: "litter", massKgPerM2: 0.2 } });
    expect(surface).toMatchObject({
      evaporation: "soil-limited",
      canopyStorageMm: 0,
      layer: { where: "under-canopy" },
    });
    const listed = defaultsUsed.filter(({ path }) => path.startsWith("block.surface"));
    expect(listed.map(({ path }) => path.slice(14))).toEqual([
      "evaporation",
      "canopyStorageMm",
      "layer.where",
      "layer.litterfallKgPerM2Year",
      "layer.decayPerYear",
    ]);
    for (const { source } of listed) expect(source.length).toBeGreaterThan(8);
  });

  it("thickens litter day by day from the mass at the start", () => {
    const layer = surfaceOf({ layer: { kind: "litter", massKgPerM2: 0 } }).surface?.layer;
    expect(layer?.storageMm[0]).toBe(0);
    expect(layer?.evaporationFactor[0]).toBe(1);
    for (let d = 1; d < 84; d++) {
      expect(layer?.storageMm[d]).toBeGreaterThan(layer?.storageMm[d - 1] ?? Number.NaN);
      expect(layer?.evaporationFactor[d]).toBeLessThan(layer?.evaporationFactor[d - 1] ?? Number.NaN);
    }
  });

  it("takes 83 % of the evaporation off under 5 cm of tephra (Diaz et al. 2005)", () => {
    const layer = surfaceOf({ layer: { kind: "gravel", thicknessCm: 5 } }).surface?.layer;
    expect(layer?.evaporationFactor[0]).toBeCloseTo(0.17, 10);
    expect(layer?.storageMm[0]).toBe(0);
    expect(layer?.where).toBe("all-ground");
  });

  it("lets 10 cm of loose mulch over half the ground hold 5 mm and take 25 % off (FAO-56 ch. 10: 5 % per 10 %)", () => {
    const { surface } = surfaceOf({ layer: { kind: "organic-mulch", thicknessCm: 10, coverFraction: 0.5 } });
    expect(surface?.layer?.storageMm[5]).toBeCloseTo(5, 10);
    expect(surface?.layer?.evaporationFactor[5]).toBeCloseTo(0.75, 10);
  });

  it("turns a curve number of the dry condition into that of NEH 630 table 10-1: 80 is 63", () => {
    const { surface } = surfaceOf({ runoff: { curveNumber: 80, antecedent: "dry" } });
    expect(surface?.curveNumber).toBe(63);
  });

  it("takes REW of a texture from the middle of FAO-56 table 19: clay 8-12 mm", () => {
    const parsed = parsedWith({ evaporation: "two-stage" });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.scenario.soil.readilyEvaporableMm).toBe(10);
    const used = parsed.defaultsUsed.find(({ path }) => path === "soil.readilyEvaporableMm");
    expect(used?.source).toMatch(/table 19/);
  });

  it("reads the same in a comparison", () => {
    const file = demoJson("comparison");
    file.block.surface = { evaporation: "two-stage", canopyStorageMm: 1 };
    const parsed = parseComparison(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.comparison.block.surface?.canopyStorageMm).toBe(1);
    for (const soil of parsed.comparison.soils) expect(soil.readilyEvaporableMm).toBeGreaterThan(0);
  });

  it("is in the JSON Schema", () => {
    expect(JSON.stringify(scenarioJsonSchema())).toMatch(/litterfallKgPerM2Year/);
  });

  it.each<[string, Editable, (file: Editable) => void, string, string]>([
    [
      "curve number beside an intensity",
      { runoff: { curveNumber: 80 } },
      (f) => {
        f.weather.rainIntensityMmPerH = 5;
      },
      "not-beside",
      "weather.rainIntensityMmPerH",
    ],
    [
      "a depth without two stages",
      { evaporableDepthCm: 12 },
      () => {},
      "only-beside",
      "block.surface.evaporableDepthCm",
    ],
    [
      "REW without two stages",
      {},
      (f) => {
        f.soil.readilyEvaporableMm = 9;
      },
      "only-beside",
      "soil.readilyEvaporableMm",
    ],
    [
      "two stages on a soil that has no texture",
      { evaporation: "two-stage" },
      (f) => {
        const vanGenuchten = { thetaResidual: 0.06, thetaSaturated: 0.41, alphaPerCm: 0.07, n: 1.9, kSatCmPerH: 4 };
        f.soil.horizons = [{ toCm: 100, vanGenuchten }];
      },
      "missing",
      "soil.readilyEvaporableMm",
    ],
    ["both ways to dry", { evaporation: "both" }, () => {}, "not-one-of", "block.surface.evaporation"],
    ["a slip of the pen", { mulch: {} }, () => {}, "unknown-key-no-likeness", "block.surface.mulch"],
    ["a layer of no known kind", { layer: { kind: "snow" } }, () => {}, "not-one-of", "block.surface.layer.kind"],
    [
      "gravel thicker than measured",
      { layer: { kind: "gravel", thicknessCm: 12 } },
      () => {},
      "above-maximum",
      "block.surface.layer.thicknessCm",
    ],
  ])("refuses %s", (_, surface, more, code, path) => {
    const parsed = parsedWith(surface, more);
    expect(parsed.ok ? [] : parsed.faults.map((found) => [found.code, found.path])).toEqual([[code, path]]);
  });
});
