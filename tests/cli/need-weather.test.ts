import { main } from "@rootledger/cli";
import { describe, expect, it } from "vitest";
import { dataPath, dataText, demoFiles, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const folder = "/files/";

async function run(argv: readonly string[], files: Readonly<Record<string, string>>) {
  const { io, written } = memoryIo(files);
  return { code: await main(argv, io), ...written };
}

// Allen et al. (1998), FAO-56, Example 18: Uccle, 6 July, 3.88 mm/day (seen). The days before and after differ from it by the sun alone.
const uccle = ["2001-07-05", "2001-07-06", "2001-07-07"].map((date) => `${date},12.3,21.5,63,84,2.78,22.07,0`);
const uccleCsv = `date,tMinC,tMaxC,rhMinPct,rhMaxPct,windMPerS,solarMJPerM2,rainMm\n${uccle.join("\n")}\n`;
const atUccle = { file: "uccle.csv", latitudeDeg: 50.8, elevationM: 100, windHeightM: 10 };
const base = {
  format: 1,
  name: "from weather",
  canopyDiameterM: 2,
  reference: { kind: "et0" },
  efficiencyFraction: 1,
};

const asked = (weather: object, more: object = {}) =>
  run(["need", `${folder}need.json`, "--json"], {
    [`${folder}need.json`]: JSON.stringify({ ...base, ...more, weather: { ...atUccle, ...weather } }),
    [`${folder}uccle.csv`]: uccleCsv,
  });

describe("need from a daily weather file", () => {
  it("has the ET0 of FAO-56 Example 18, and litres on the canopy's ground", async () => {
    const { code, stdout, stderr } = await asked({ coefficient: 0.8 });
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    const { need, notes } = JSON.parse(stdout);
    const [july] = need.periods;
    expect(july).toMatchObject({ name: "July", days: 3 });
    expect(Math.abs(july.referenceMmPerDay - 3.88)).toBeLessThan(0.01);
    expect(july.meanDay.netLPerTree).toBeCloseTo(july.referenceMmPerDay * 0.8 * Math.PI, 9);
    expect(notes[0]).toBe("uccle.csv: 3 days, 2001-07-05 to 2001-07-07");
  });

  it("takes a coefficient by date or by crop", async () => {
    const kc = [
      { date: "2001-07-05", kc: 0.6 },
      { date: "2001-07-07", kc: 1 },
    ];
    const byDate = JSON.parse((await asked({ kc })).stdout);
    expect(byDate.need.periods[0].coefficient).toBeCloseTo(0.8, 3);
    const byCrop = JSON.parse((await asked({ crop: { preset: "citrus" } })).stdout);
    // FAO-56 table 17, citrus of 70 % canopy without ground cover: Kcb 0.65, 0.60, 0.65.
    expect(byCrop.need.periods[0].coefficient).toBeGreaterThanOrEqual(0.6);
    expect(byCrop.need.periods[0].coefficient).toBeLessThanOrEqual(0.65);
    expect(byCrop.defaultsUsed.map(({ path }: { path: string }) => path)).toContain("weather.crop.coefficient");
  });

  it.each([
    [{}, {}, /^weather: received .*; must have exactly one of coefficient, kc, crop$/m],
    [{ coefficient: 1, crop: { preset: "citrus" } }, {}, /exactly one of coefficient, kc, crop/],
    [{ coefficient: 1, file: "none.csv" }, {}, /none\.csv/],
    [{ coefficient: 1, latitudeDeg: 95 }, {}, /^weather\.latitudeDeg: received 95; must be at most 66$/m],
    [
      { coefficient: 1 },
      { reference: { kind: "pan-factor" } },
      /^reference\.kind: received "pan-factor"; must be left out/m,
    ],
    [{ coefficient: 1 }, { periods: [] }, /^periods: received .*; must have at least 1 entry$/m],
    [
      { coefficient: 1 },
      { periods: [{ name: "July", days: 31, referenceMmPerDay: 4, coefficient: 1 }] },
      /^periods: received .*; must have exactly one of periods, weather$/m,
    ],
    [{ coefficient: 1 }, { scenario: "a.json" }, /^practice: received nothing; is required: a list/m],
    [{ kc: [1, 2].map((day) => ({ date: `2001-07-0${3 - day}`, kc: 1 })) }, {}, /^weather\.kc\[1\]\.date/m],
    [
      { crop: { preset: "citrus", phenology: { bloom: "soon" } } },
      {},
      /^weather\.crop\.phenology\.bloom: received "soon"/m,
    ],
  ])("%j and %j are refused", async (weather, more, message) => {
    const { code, stdout, stderr } = await asked(weather, more);
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(stderr).toMatch(message);
  });

  it("takes the file's rain off on rooted ground only: above 5 mm, and no more than the soil has room for", async () => {
    // Western Australia agriculture department, citrus: 4 mm count as nothing; of 9 and 30 mm the soil takes 9 and 12.
    const rain = uccleCsv.replace(/,0\n/, ",4\n").replace(/,0\n/, ",9\n").replace(/,0\n/, ",30\n");
    const usefulRain = { rootedGroundM2: 0.2, roomMm: 12 };
    const weather = { ...atUccle, coefficient: 1, usefulRain };
    const { stdout, code } = await run(["need", `${folder}need.json`, "--json"], {
      [`${folder}need.json`]: JSON.stringify({ ...base, weather }),
      [`${folder}uccle.csv`]: rain,
    });
    expect(code).toBe(0);
    const { need, defaultsUsed } = JSON.parse(stdout);
    const [july] = need.periods;
    expect(3 * july.meanDay.netLPerTree - july.netLPerTree).toBeCloseTo(21 * 0.2, 9);
    expect(defaultsUsed.map(({ path }: { path: string }) => path)).toContain("weather.usefulRain.countsAboveMm");
  });

  it("asks for the days of a gap, or fills them by the stated rule and says so", async () => {
    const gap = "date,tMinC,tMaxC,rainMm\n2024-05-01,10,20,0\n2024-05-02,,,\n2024-05-03,12,22,0\n";
    const options = [
      "need",
      "--weather",
      "/files/w.csv",
      "--latitude-deg=40",
      "--elevation-m=5",
      "--kc=1",
      "--canopy-m=2",
    ];
    const files = { "/files/w.csv": gap };
    expect((await run(options, files)).stderr).toMatch(/line 3, tMinC: received nothing; is required on every day/);
    const filled = await run([...options, "--longest-gap-days=1"], files);
    expect(filled.code).toBe(0);
    expect(filled.stdout).toMatch(/tMinC: missing on 1 of 3 days, taken on a line/);
  });

  it("reads a station's own file, and all the years of a long record into months of the year", async () => {
    const name = "/files/station.csv";
    const dublin = dataText("messy/real_metie_dublin_airport_1993-01_1993-03.csv");
    const options = ["--latitude-deg=53.43", "--elevation-m=71", "--kc=0.8", "--canopy-m=3", "--json"];
    const { code, stdout } = await run(["need", "--weather", name, ...options], { [name]: dublin });
    expect(code).toBe(0);
    const { need, notes } = JSON.parse(stdout);
    expect(need.periods.map(({ name: month, days }: { name: string; days: number }) => [month, days])).toEqual([
      ["January", 31],
      ["February", 28],
      ["March", 5],
    ]);
    expect(notes.join("\n")).toMatch(/64 days, 1993-01-01 to 1993-03-05/);
    const malaga = { [name]: dataText("weather/malaga-1992-2011.csv") };
    const years = JSON.parse((await run(["need", "--weather", name, ...options], malaga)).stdout);
    expect(years.need.periods).toHaveLength(12);
    expect(years.need.periods[1]).toMatchObject({ name: "February", days: 28.25 });
  });
});

it("shows where a practice's water goes, beside its ratio, for the demo file", async () => {
  const { code, stdout, stderr } = await run(["need", dataPath("demo/need-young.json")], {});
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  expect(stdout).toMatch(
    /\nWhere it goes\n +given L +wanted L +ratio +tree +air +below +run-off +stored\nfirst year +9\.00 /,
  );
});

// Litres by age: common practice, no source. Nothing is fitted to them; the ratios are reported.
describe("first-year trees given 8, then 10, 15 and 20 L a day (common practice, no source)", () => {
  const ages = [
    ["planted", 8, 0.6],
    ["after some months", 10, 0.8],
    ["later", 15, 1],
    ["end of the first year, hot", 20, 1.2],
  ] as const;

  it("get more than their computed need, and the account says where it goes", async () => {
    const practice = ages.map(([name, litresPerTreePerDay, canopyDiameterM]) => ({
      name,
      litresPerTreePerDay,
      canopyDiameterM,
    }));
    const file = { ...JSON.parse(dataText("demo/need-young.json")), practice };
    const scenario = { ...demoJson("young-trees"), season: { startDate: "2025-12-01", days: 60 } };
    const { code, stdout, stderr } = await run(["need", `${folder}need.json`, "--json"], {
      [`${folder}need.json`]: JSON.stringify(file),
      [`${folder}weather.csv`]: demoFiles["weather.csv"],
      [`${folder}young-trees.json`]: JSON.stringify(scenario),
    });
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    const { practice: ratios, accounts } = JSON.parse(stdout);
    for (const [i, [name, litres]] of ages.entries()) {
      const { givenL, wantedL, ratio, takenL, takenWithoutL, goes } = accounts[i];
      const { transpiredL, evaporatedL, belowRootsL, ranOffL, storedL } = goes;
      console.info(
        `${name}: ${litres} L, need ${ratios[i].neededL.toFixed(1)} L, ratio ${ratios[i].ratio.toFixed(2)} (season ${ratio.toFixed(2)}); tree ${transpiredL.toFixed(2)}, air ${evaporatedL.toFixed(2)}, below ${belowRootsL.toFixed(2)}, run-off ${ranOffL.toFixed(2)}, stored ${storedL.toFixed(2)}`,
      );
      expect(ratios[i].ratio, name).toBeGreaterThan(1);
      expect(givenL, name).toBeCloseTo(litres, 6);
      expect(transpiredL + evaporatedL + belowRootsL + ranOffL + storedL, name).toBeCloseTo(litres, 6);
      expect(transpiredL, name).toBeCloseTo(takenL - takenWithoutL, 9);
      expect(takenL, name).toBeLessThanOrEqual(wantedL + 1e-9);
      for (const flux of [transpiredL, evaporatedL, belowRootsL, ranOffL]) expect(flux, name).toBeGreaterThan(-1e-6);
    }
  });
});
