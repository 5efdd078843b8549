import { parseScenario, scenarioJsonSchema } from "rootledger/scenario";
import { describe, expect, it } from "vitest";
import { demoFiles, demoJson, type Editable } from "../../support/demo-files.js";

const parsedWith = (edit: (file: Editable) => void) => {
  const file = demoJson("scenario");
  edit(file);
  return parseScenario(file, demoFiles);
};

const accepted = (edit: (file: Editable) => void) => {
  const parsed = parsedWith(edit);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed;
};

const { startDate } = demoJson("scenario").season;

describe("salt and nitrogen of the file", () => {
  it("are left out of a scenario that does not name them", () => {
    const { scenario } = accepted(() => {});
    expect(scenario.block.salt).toBeUndefined();
    expect(scenario.block.nitrogen).toBeUndefined();
    expect(scenario.programme.nitrogen).toBeUndefined();
  });

  it("salt takes avocado's line and 1.5 ECw, and lists both with their source", () => {
    const { scenario, defaultsUsed } = accepted((f) => {
      f.block.salt = { waterEcDsPerM: 0.8 };
    });
    expect(scenario.block.salt).toEqual({
      waterEcDsPerM: 0.8,
      startEceDsPerM: 1.5 * 0.8,
      response: { kind: "threshold-slope", thresholdDsPerM: 1.3, slopePerDsPerM: 0.21 },
    });
    const listed = defaultsUsed.filter(({ path }) => path.startsWith("block.salt"));
    expect(listed.map(({ path }) => path.slice(11))).toEqual(["startEceDsPerM", "response", "crop"]);
    for (const { source } of listed) expect(source).toMatch(/FAO-29|Maas/);
  });

  it("takes another crop or a line of one's own", () => {
    const responseOf = (more: Editable) =>
      accepted((f) => {
        f.block.salt = { waterEcDsPerM: 1, ...more };
      }).scenario.block.salt?.response;
    expect(responseOf({ crop: "date palm" })).toMatchObject({ thresholdDsPerM: 4, slopePerDsPerM: 0.036 });
    expect(responseOf({ thresholdDsPerM: 0.6, slopePerDsPerM: 0.3 })).toMatchObject({ thresholdDsPerM: 0.6 });
    expect(responseOf({ response: "osmotic-head" })).toEqual({ kind: "osmotic-head" });
  });

  it("nitrogen takes the usual times of injection and lists what it fills in", () => {
    const { scenario, defaultsUsed } = accepted((f) => {
      f.programme.nitrogen = { throughWater: { mgPerL: 30 }, byHand: [{ date: startDate, gPerTree: 40 }] };
    });
    expect(scenario.programme.nitrogen).toEqual({
      throughWater: { afterMinutes: 25, injectMinutes: 45, amount: { mgPerL: 30 } },
      byHand: [{ date: startDate, gPerTree: 40, ground: "under-canopy" }],
    });
    expect(defaultsUsed.filter(({ path }) => path.startsWith("programme.nitrogen"))).toHaveLength(3);
  });

  it.each<[string, (file: Editable) => void, string, string]>([
    [
      "a slope alone",
      (f) => {
        f.block.salt = { waterEcDsPerM: 1, slopePerDsPerM: 0.2 };
      },
      "missing",
      "block.salt.thresholdDsPerM",
    ],
    [
      "a threshold alone",
      (f) => {
        f.block.salt = { waterEcDsPerM: 1, thresholdDsPerM: 1 };
      },
      "missing",
      "block.salt.slopePerDsPerM",
    ],
    [
      "two tolerances",
      (f) => {
        f.block.salt = { waterEcDsPerM: 1, crop: "peach", thresholdDsPerM: 1, slopePerDsPerM: 0.2 };
      },
      "not-beside",
      "block.salt.crop",
    ],
    [
      "a tolerance that is not used",
      (f) => {
        f.block.salt = { waterEcDsPerM: 1, crop: "peach", response: "none" };
      },
      "only-beside",
      "block.salt.crop",
    ],
    [
      "no water",
      (f) => {
        f.block.salt = {};
      },
      "missing",
      "block.salt.waterEcDsPerM",
    ],
    [
      "a crop of no row",
      (f) => {
        f.block.salt = { waterEcDsPerM: 1, crop: "mango" };
      },
      "not-one-of",
      "block.salt.crop",
    ],
    [
      "nitrogen of no kind",
      (f) => {
        f.programme.nitrogen = {};
      },
      "missing",
      "programme.nitrogen",
    ],
    [
      "two amounts",
      (f) => {
        f.programme.nitrogen = { throughWater: { mgPerL: 1, gPerTreePerRun: 1 } };
      },
      "exactly-one-of",
      "programme.nitrogen.throughWater",
    ],
    [
      "eleven months",
      (f) => {
        f.programme.nitrogen = { throughWater: { kgPerHaByMonth: Array(11).fill(1) } };
      },
      "too-few",
      "programme.nitrogen.throughWater.kgPerHaByMonth",
    ],
    [
      "an injection longer than the run",
      (f) => {
        f.programme.nitrogen = { throughWater: { mgPerL: 1, injectMinutes: 1400 } };
      },
      "injection-beyond-run",
      "programme.nitrogen.throughWater.injectMinutes",
    ],
    [
      "a dose before the season",
      (f) => {
        f.programme.nitrogen = { byHand: [{ date: "1999-01-01", gPerTree: 5 }] };
      },
      "date-outside-season",
      "programme.nitrogen.byHand[0].date",
    ],
    [
      "a dose of no date",
      (f) => {
        f.programme.nitrogen = { byHand: [{ date: "2025-02-30", gPerTree: 5 }] };
      },
      "not-a-date",
      "programme.nitrogen.byHand[0].date",
    ],
  ])("refuses %s", (_, spoil, code, path) => {
    const parsed = parsedWith(spoil);
    const faults = parsed.ok ? [] : parsed.faults;
    expect(faults.map((fault) => [fault.code, fault.path])).toEqual([[code, path]]);
    for (const { rule } of faults) expect(rule).not.toMatch(/\$/);
  });

  it("are in the JSON schema with their units", () => {
    const text = JSON.stringify(scenarioJsonSchema());
    expect(text).toMatch(/"waterEcDsPerM"/);
    expect(text).toMatch(/backflow/);
  });
});
