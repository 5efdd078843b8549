import { saltyWaterFindings } from "rootledger/lines";
import { parseScenario, solutesDefaults } from "rootledger/scenario";
import { maasHoffmanTable } from "rootledger/tree";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson } from "../support/demo-files.js";

describe("salty water beside published limits", () => {
  const level = (crop: string, ecDsPerM: number) => saltyWaterFindings(crop, { ecDsPerM })[0]?.level;

  // Western Australia agriculture department, annual water for avocado: ideal below 0.3 dS/m, preferred below 0.5, to 0.7 and more with
  // care. Crowley (2008), California Avocado Society Yearbook 91: EC above 0.75 dS/m and chloride above 100 mg/L trouble avocado.
  it("avocado: ideal, preferred, with care, troublesome", () => {
    expect([0.2, 0.4, 0.7, 0.8].map((ec) => level("avocado", ec))).toEqual([
      "ideal",
      "preferred",
      "with-care",
      "troublesome",
    ]);
    const chloride = (mgPerL: number) => saltyWaterFindings("avocado", { chlorideMgPerL: mgPerL })[0]?.level;
    expect([100, 101].map(chloride)).toEqual(["not-exceeded", "troublesome"]);
  });

  // Hanson & Bendixen (2004), California Agriculture 58(1):48: strawberry may lose above 1 dS/m.
  it("strawberry from 1 dS/m; nothing is said of a crop without limits", () => {
    expect([1, 1.1].map((ec) => level("strawberry", ec))).toEqual(["not-exceeded", "troublesome"]);
    expect(saltyWaterFindings("orange", { ecDsPerM: 3, chlorideMgPerL: 500 })).toEqual([]);
    expect(saltyWaterFindings("toString", { ecDsPerM: 3 })).toEqual([]);
    expect(() => saltyWaterFindings("avocado", { ecDsPerM: -1 })).toThrow(/ecDsPerM from 0: got -1/);
    expect(() => saltyWaterFindings("avocado", { chlorideMgPerL: Number.NaN })).toThrow(/chlorideMgPerL from 0/);
  });

  // FAO-29 (Ayers & Westcot 1985) table 4 class, 1.3 dS/m; Oster et al. (2007), JASHS 132(2), about 0.6 in a field trial; from memory.
  it("the default threshold of avocado lies in the published range", () => {
    const threshold = maasHoffmanTable[solutesDefaults.crop.value]?.thresholdDsPerM?.[0] ?? Number.NaN;
    expect(threshold).toBeGreaterThanOrEqual(0.5);
    expect(threshold).toBeLessThanOrEqual(1.5);
  });

  it("a scenario with salt says so among its notes, with figure and source", () => {
    const notesOf = (salt: object): readonly string[] => {
      const file = demoJson("scenario");
      file.block.salt = salt;
      const parsed = parseScenario(file, demoFiles);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
      return parsed.notes.filter((note) => note.startsWith("water of"));
    };
    expect(notesOf({ waterEcDsPerM: 0.4, chlorideMgPerL: 60 })).toEqual([]);
    const [ec, chloride] = notesOf({ waterEcDsPerM: 0.9, chlorideMgPerL: 140 });
    expect(ec).toMatch(/EC 0.9 dS\/m is beyond 0.75, troublesome for avocado .*Crowley \(2008\)/);
    expect(chloride).toMatch(/chloride 140 mg\/L is beyond 100/);
    expect(notesOf({ waterEcDsPerM: 0.6 })[0]).toMatch(/beyond 0.5, to be used with care/);
  });
});
