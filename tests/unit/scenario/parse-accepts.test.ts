import { simulate } from "rootledger";
import { defaults, filesNamed, parseComparison, parseScenario } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { dataText, demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

describe("the demo and station files", () => {
  it.each(["demo", "station"])("data/%s/comparison.json is accepted", (folder) => {
    const file = JSON.parse(dataText(`${folder}/comparison.json`));
    const files = Object.fromEntries(filesNamed(file).map((name) => [name, dataText(`${folder}/${name}`)]));
    const parsed = parseComparison(file, files);
    expect(parsed.ok ? [] : parsed.faults).toEqual([]);
    if (!parsed.ok) return;
    const litres = parsed.comparison.programmes.map(({ runs: [run] }) =>
      run && "litresPerTree" in run.amount ? run.amount.litresPerTree / run.everyDays : Number.NaN,
    );
    expect(new Set(litres).size, "all programmes give the same litres a day").toBe(1);
    const { weather, block } = parsed.comparison;
    const meanEt0Mm = weather.et0Mm.reduce((sum, mm) => sum + mm, 0) / weather.days;
    const needL = 0.8 * meanEt0Mm * block.treeSpacingM * block.rowSpacingM;
    expect(Math.abs((0.9 * (litres[0] ?? 0)) / needL - 1), "the need over 0.9, as the remark says").toBeLessThan(0.02);
  });

  it("says in the demo that the place is invented", () => {
    expect(demoJson("comparison").remark).toMatch(/invented/i);
    expect(demoJson("scenario").name).toMatch(/invented/i);
  });
});

describe("a parsed scenario", () => {
  it("keeps field units, turns the clock into hours and carries the season's weather", () => {
    const file = demoJson("scenario");
    file.programme.runs[0] = { start: "22:30", everyDays: 2, minutes: 90 };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const { scenario } = parsed;
    expect(scenario.programme.runs).toEqual([
      { startH: 22.5, everyDays: 2, firstDay: 0, pulses: 1, gapMinutes: 0, amount: { minutes: 90 } },
    ]);
    expect(scenario.weather.startDate).toBe("2025-12-01");
    for (const column of ["et0Mm", "rainMm", "sunriseH", "sunsetH"] as const) {
      expect(scenario.weather[column]).toHaveLength(84);
      expect(scenario.weather[column].every(Number.isFinite), column).toBe(true);
    }
    // The demo's only rain of the season: 1.6 mm on 2025-12-06 and 4.4 mm on 2026-02-02 (data/demo/make-weather.mjs).
    expect(scenario.weather.rainMm[5]).toBe(1.6);
    expect(scenario.weather.rainMm[63]).toBe(4.4);
  });

  it("runs", () => {
    const file = demoJson("scenario");
    file.season.days = 3;
    file.start = { kind: "same-state" };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(simulate(parsed.scenario).status.kind).toBe("finished");
  });

  it("takes an own curve, a disc of roots and a line on the row", () => {
    const file = demoJson("scenario");
    const vanGenuchten = { thetaResidual: 0.065, thetaSaturated: 0.41, alphaPerCm: 0.075, n: 1.89, kSatCmPerH: 4.42 };
    file.soil.horizons = [{ toCm: 80, vanGenuchten }];
    file.block.tree.roots = { lateral: { kind: "disc", radiusCm: 120 } };
    file.block.lines.offsetsM = [0];
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.scenario.soil.horizons).toEqual([{ toCm: 80, vanGenuchten }]);
    expect(parsed.scenario.block.tree.roots.lateral).toEqual({ kind: "disc", radiusCm: 120 });
  });

  it.each([
    [{ texture: "loam", curveSet: "cosby-1984", structure: "crumbly", stonesFraction: 0.2 }],
    [{ texture: "loam", limits: { fieldCapacity: 0.28, fieldCapacityTensionKPa: 10, wiltingPoint: 0.12 } }],
    [{ particles: { sandFraction: 0.4, clayFraction: 0.2, organicMatterFraction: 0.025, densityFactor: 1.1 } }],
    [{ brooksCorey: { thetaResidual: 0.04, thetaSaturated: 0.45, airEntryCm: 14.7, lambda: 0.38, kSatCmPerH: 2.6 } }],
    [
      {
        points: [
          { tensionKPa: 0, theta: 0.45, conductivityCmPerH: 2 },
          { tensionKPa: 10, theta: 0.3, conductivityCmPerH: 0.02 },
          { tensionKPa: 1500, theta: 0.12, conductivityCmPerH: 1e-7 },
        ],
      },
    ],
    [
      {
        vanGenuchten: { thetaResidual: 0.1, thetaSaturated: 0.4, alphaPerCm: 0.02, n: 1.3, kSatCmPerH: 1 },
        nearSaturation: "minimum-capillary-height",
      },
    ],
  ])("runs on %o", (material) => {
    const file = demoJson("scenario");
    file.season.days = 2;
    file.start = { kind: "same-state" };
    file.soil.horizons = [{ toCm: 100, ...material }];
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const result = simulate(parsed.scenario);
    expect(result.status.kind).toBe("finished");
    expect(Math.abs(result.ledger.residualFraction[0]!)).toBeLessThan(1e-9);
  });

  it("leaves the input as it was", () => {
    const file = demoJson("comparison");
    parseComparison(Object.freeze(file), demoFiles);
    expect(file).toEqual(demoJson("comparison"));
  });
});

describe("defaults", () => {
  const bare = () => {
    const file = demoJson("scenario");
    delete file.start;
    file.block.lines.drainOut = { innerDiameterMm: 14 };
    delete file.weather.windHeightM;
    delete file.weather.et0Method;
    delete file.soil.horizons[0].structure;
    file.programme.runs = [{ start: "06:00", everyDays: 1, minutes: 60 }];
    return file;
  };

  it("are all listed with path, value and source when the file leaves them out", () => {
    const parsed = parseScenario(bare(), demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const listed = Object.fromEntries(parsed.defaultsUsed.map(({ path, value, source }) => [path, { value, source }]));
    const expected: Record<string, keyof typeof defaults> = {
      "block.tree.roots.depthCm": "rootDepthCm",
      "block.tree.roots.topShare": "topShare",
      "block.tree.roots.lateral.kind": "lateralKind",
      "block.tree.roots.compensationOnset": "compensationOnset",
      "block.tree.limits.pullLimitKPa": "pullLimitKPa",
      "block.tree.limits.zeroUptakeKPa": "zeroUptakeKPa",
      "block.tree.limits.airLimitFraction": "airLimitFraction",
      "block.tree.limits.airZeroFraction": "airZeroFraction",
      "block.tree.limits.airReturnKPa": "airReturnKPa",
      "block.lines.lowQuarterUniformityFraction": "lowQuarterUniformityFraction",
      "block.lines.pluggedPerTree": "pluggedPerTree",
      "block.lines.drainOut.drainHours": "drainHours",
      "block.lines.drainOut.lowTreesFraction": "lowTreesFraction",
      "soil.horizons[0].structure": "structure",
      "soil.bottom.kind": "bottomKind",
      "programme.runs[0].firstDay": "firstDay",
      "programme.runs[0].pulses": "pulses",
      "start.tensionKPa": "startTensionKPa",
      "start.kind": "startKind",
      engine: "engine",
      "weather.windHeightM": "windHeightM",
      "weather.et0Method": "et0Method",
      "weather.rainIntensityMmPerH": "rainIntensityMmPerH",
    };
    // The half-width belongs to roots along the lines, which a file must ask for.
    const others = Object.keys(defaults).filter((name) => name !== "lateralHalfWidthCm");
    expect(Object.values(expected).sort(), "every default there is").toEqual(others.sort());
    for (const [path, name] of Object.entries(expected)) {
      expect(listed[path], path).toEqual({ value: String(defaults[name].value), source: defaults[name].source });
    }
  });

  it("give roots along the lines a half-width, and wetted lanes none", () => {
    const lateralOf = (lateral: object) => {
      const file = bare();
      file.block.tree.roots = { lateral };
      const parsed = parseScenario(file, demoFiles);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
      const used = parsed.defaultsUsed.filter(({ path }) => path.startsWith("block.tree.roots.lateral"));
      return { lateral: parsed.scenario.block.tree.roots.lateral, used };
    };
    const along = lateralOf({ kind: "along-lines" });
    expect(along.lateral).toEqual({ kind: "along-lines", halfWidthCm: defaults.lateralHalfWidthCm.value });
    expect(along.used.map(({ path }) => path)).toEqual(["block.tree.roots.lateral.halfWidthCm"]);
    expect(lateralOf({ kind: "wetted-lanes" })).toEqual({ lateral: { kind: "wetted-lanes" }, used: [] });
  });

  it("are not listed when the file gives the value, even the same one", () => {
    const file = bare();
    file.block.tree.limits = { pullLimitKPa: defaults.pullLimitKPa.value };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect(parsed.defaultsUsed.map((used) => used.path)).not.toContain("block.tree.limits.pullLimitKPa");
  });

  it("list the rules that stood in for missing weather", () => {
    const file = JSON.parse(dataText("station/comparison.json"));
    const parsed = parseComparison(file, { "../weather/malaga-2011.csv": dataText("weather/malaga-2011.csv") });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const rules = parsed.defaultsUsed.filter((used) => used.path.startsWith("weather.file"));
    expect(rules.map((rule) => `${rule.value} | ${rule.source}`)).toContainEqual(
      expect.stringMatching(/dew point .*84 of 84 days \| FAO-56 eq. 48/),
    );
  });

  it("contradict one another nowhere and say where they come from", () => {
    const { airReturnKPa, pullLimitKPa, zeroUptakeKPa, airZeroFraction, airLimitFraction } = defaults;
    expect(airReturnKPa.value).toBeLessThan(pullLimitKPa.value);
    expect(pullLimitKPa.value).toBeLessThan(zeroUptakeKPa.value);
    expect(airZeroFraction.value).toBeLessThan(airLimitFraction.value);
    for (const [name, entry] of Object.entries(defaults)) {
      expect(entry.source.length, name).toBeGreaterThan(5);
      expect(entry.published.length, name).toBeGreaterThan(3);
    }
  });

  // Bender, G.S., UC Cooperative Extension San Diego, avocado irrigation notes: 80-90 % of feeder roots in the top 20-25 cm.
  it("put the top share inside the published 80-90 %", () => {
    expect(defaults.topShare.value).toBeGreaterThanOrEqual(0.8);
    expect(defaults.topShare.value).toBeLessThanOrEqual(0.9);
  });
});

describe("reference evapotranspiration by another method than the standard one", () => {
  const withWeather = (weather: Editable, csv: string) => {
    const file = demoJson("scenario");
    file.season = { startDate: "2025-12-01", days: 2 };
    file.weather = { ...file.weather, ...weather };
    return parseScenario(file, { "weather.csv": csv });
  };
  const pan = "date,panMm,rainMm\n2025-12-01,8,0\n2025-12-02,6,0\n";

  it("takes a pan times its coefficient, from a file without temperatures (FAO-56, Allen et al. 1998, eq. 55)", () => {
    const read = withWeather({ et0Method: "pan", panCoefficient: 0.7 }, pan);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect([...read.scenario.weather.et0Mm].map((mm) => mm.toFixed(6))).toEqual(["5.600000", "4.200000"]);
  });

  it("refuses a pan without a coefficient, a coefficient without a pan and a gap", () => {
    const faultsOf = (weather: Editable, csv: string) => {
      const read = withWeather(weather, csv);
      return read.ok ? [] : read.faults.map(({ code, path }) => `${path} ${code}`);
    };
    expect(faultsOf({ et0Method: "pan" }, pan)).toEqual(["weather.panCoefficient pan-coefficient-out-of-range"]);
    expect(faultsOf({ panCoefficient: 0.7, et0Method: "given" }, pan.replace("panMm", "et0Mm"))).toEqual([
      "weather.panCoefficient only-beside",
    ]);
    expect(faultsOf({ et0Method: "pan", panCoefficient: 0.7 }, pan.replace("8", ""))).toEqual([
      "weather.csv line 2, panMm missing-value",
    ]);
  });

  it("has ASCE's short reference beside FAO-56's, a hair apart: only the constant of net longwave radiation differs", () => {
    const day = "12,31,40,80,2,27.5,0";
    const csv = `date,tMinC,tMaxC,rhMinPct,rhMaxPct,windMPerS,solarMJPerM2,rainMm\n2025-12-01,${day}\n2025-12-02,${day}\n`;
    const et0 = (et0Method: string): number => {
      const read = withWeather({ et0Method }, csv);
      if (!read.ok) throw new Error(JSON.stringify(read.faults));
      return read.scenario.weather.et0Mm[0] ?? Number.NaN;
    };
    expect(et0("asce-short")).not.toBe(et0("penman-monteith"));
    expect(Math.abs(et0("asce-short") - et0("penman-monteith"))).toBeLessThan(0.01);
  });
});
