import { main } from "@rootledger/cli";
import { sensorTwin, sheet } from "rootledger/advise";
import { defaultPriors } from "rootledger/chance";
import { parseScenario } from "rootledger/scenario";
import { type SheetFormat, sheetEnglish, sheetHtml, sheetPlain, sheetSpanish, sheetText } from "rootledger/words";
import { describe, expect, test } from "vitest";
import { dataPath, demoFiles, demoJson } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const quick = ["--day", "30", "--members", "4"];

async function run(...argv: string[]) {
  const { io, written } = memoryIo();
  const given = quick.filter((_, i) => !argv.includes(quick[i - (i % 2)] ?? ""));
  const code = await main(["sheet", dataPath("demo/scenario.json"), ...given, ...argv], io);
  return { code, out: written.stdout, err: written.stderr };
}

describe("the grower's sheet", () => {
  test("fits half a page: litres, hours, starts, days, emitters, latest stop, readings, stop-if, weather, expiry, cautions", async () => {
    const { code, out } = await run();
    expect(code).toBe(0);
    expect(out).toMatch(/133 L for each tree/);
    expect(out).toMatch(/Every day\./);
    expect(out).toMatch(/Open at 06:00, for 4 h 9 min/);
    expect(out).toMatch(/Never later than 10:09/);
    expect(out).toMatch(/All 20 emitters/);
    expect(out.match(/most likely/g)).toHaveLength(3);
    expect(out).toMatch(/Stop, and call, if/);
    expect(out).toMatch(/Weather used: Valle Almagra \(invented\)/);
    expect(out).toMatch(/After 13 January this sheet no longer holds/);
    expect(out).toMatch(/guard against backflow/);
    expect(out.trim().split("\n").length).toBeLessThanOrEqual(30);
    expect(out).not.toMatch(/\$[a-z]/);
  });

  test("speaks Spanish with its numbers and dates, and US units", async () => {
    const { out } = await run("--language", "es", "--units", "us");
    expect(out).toMatch(/35,1 gal por árbol/);
    expect(out).toMatch(/Después del 13 de enero/);
    expect(out).not.toMatch(/\$[a-z]/);
  });

  test("prints HTML without script or anything fetched, and JSON with the bands", async () => {
    const { out } = await run("--as", "html");
    expect(out).toMatch(/^<!doctype html>/);
    expect(out).not.toMatch(/<script|https?:|<img|<link/);
    const { out: json } = await run("--json");
    const answer = JSON.parse(json);
    expect(answer.expected).toHaveLength(3);
    for (const { lowKPa, medianKPa, highKPa } of answer.expected) {
      expect(lowKPa).toBeLessThanOrEqual(medianKPa);
      expect(medianKPa).toBeLessThanOrEqual(highKPa);
    }
    expect(((answer.litresPerTree * 1000) / 240_000) * 10).toBeCloseTo(answer.depthMm, 9);
  });

  test("says what is wrong with an option", async () => {
    for (const [flag, value] of [
      ["--day", "400"],
      ["--language", "fr"],
      ["--units", "x"],
      ["--as", "pdf"],
      ["--members", "0"],
    ] as const) {
      const { code, err } = await run(flag, value);
      expect(code).toBe(1);
      expect(err).toContain(flag);
    }
  });
});

test("a day from which nothing is watered is a fault of the question, said in words", async () => {
  const file = demoJson("scenario");
  file.programme.runs = [{ start: "06:00", everyDays: 40, firstDay: 0, pulses: 1, litresPerTree: 100 }];
  const { io, written } = memoryIo({
    "/block/none.json": JSON.stringify(file),
    "/block/weather.csv": demoFiles["weather.csv"],
  });
  expect(await main(["sheet", "/block/none.json", "--day", "5", "--members", "2"], io)).toBe(1);
  expect(written.stderr).toMatch(/^--day 5: no run of the programme falls into the 14 days from it/);
});

describe("a sheet in words", () => {
  const format: SheetFormat = {
    language: "en",
    units: { water: "L", depth: "mm", tension: "kPa", area: "ha", length: "cm" },
    number: (value, digits) => String(Number(value.toPrecision(digits))),
    date: (iso) => iso,
  };

  test("has the same texts in both languages, with the same terms", () => {
    const terms = (text: string): string[] => (text.match(/\$[a-z]+/gi) ?? []).sort();
    for (const [key, english] of Object.entries(sheetEnglish)) {
      const spanish = Object.entries(sheetSpanish).find(([name]) => name === key)?.[1];
      expect(terms(JSON.stringify(spanish)), key).toEqual(terms(JSON.stringify(english)));
    }
  });

  test.each([
    [11, 4, /above 20 kPa for two days/, /expected (beyond|below)/],
    [30, 44, /passes 44 kPa before a run/, /above 20 kPa for two days/],
    [60, 90, /expected beyond 20 kPa/, /above 20 kPa for two days|passes/],
    [3, 6, /expected below 5 kPa, still short of air/, /still reads below 5 kPa/],
  ])(
    "asks for no call where the programme itself is expected to cross a limit: %d kPa before a run",
    (medianKPa, highKPa, has, hasNot) => {
      const parsed = parseScenario(demoJson("scenario"), demoFiles);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
      const priors = defaultPriors({ block: parsed.scenario.block, soils: [parsed.scenario.soil] });
      const answer = sheet(parsed.scenario, {
        day: 1,
        draws: { source: { kind: "priors", priors, seed: 1 }, members: 2 },
      });
      const expected = answer.expected.map((reading) =>
        reading.when === "before-run" ? { ...reading, medianKPa, highKPa } : reading,
      );
      for (const words of [sheetEnglish, sheetSpanish]) {
        const text = sheetText({ ...answer, expected }, words, format);
        expect(sheetPlain(text)).not.toMatch(/\$[a-z]|undefined/);
        if (words !== sheetEnglish) continue;
        const said = [...text.lines, ...text.stopIf].join("\n");
        expect(said).toMatch(has);
        expect(said).not.toMatch(hasNot);
      }
    },
  );

  test.each([
    ["night pulses that end at 02:00", "21:00", 4, 120, 30],
    ["a run that ends at 05:30, in the small hours", "22:00", 1, 450, 32],
    ["a long run that ends at 11:00 a day later", "06:00", 1, 1740, 54],
  ])("the deep sensor is read in the morning after the last closing: %s", (_, start, pulses, minutes, hour) => {
    const file = demoJson("scenario");
    file.programme.runs = [{ start, everyDays: 4, firstDay: 0, pulses, gapMinutes: 60, minutes }];
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const { scenario } = parsed;
    const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
    const draws = { source: { kind: "priors", priors, seed: 1 }, members: 2 } as const;
    const places = [{ depthCm: 50, fromLineCm: 10 }];
    // From day 1 on the first watering is on day 4.
    const twin = sensorTwin(scenario, { places, fromHour: 4 * 24 + hour - 1, hours: 1 }, draws);
    const deep = sheet(scenario, { day: 1, draws }).expected.find(({ when }) => when === "next-morning");
    expect(deep?.medianKPa).toBe(twin.sensors[0]?.medianKPa[0]);
  });

  test.each([
    [2.1, /EC 2\.1 dS\/m.*leaching and local advice decide/],
    [undefined, /^(?!.*dS\/m)/s],
  ])("says what salty water asks for, and nothing where the water is not known: EC %s", (waterEcDsPerM, has) => {
    const file = demoJson("scenario");
    if (waterEcDsPerM !== undefined) file.block.salt = { waterEcDsPerM };
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const priors = defaultPriors({ block: parsed.scenario.block, soils: [parsed.scenario.soil] });
    const draws = { source: { kind: "priors", priors, seed: 1 }, members: 2 } as const;
    const text = sheetText(sheet(parsed.scenario, { day: 1, draws }), sheetEnglish, format);
    expect(sheetPlain(text)).toMatch(has);
  });

  test("escapes what others wrote and lists pulses, dates and plugged emitters", () => {
    const file = demoJson("scenario");
    file.name = '<b>Block & "one"</b>';
    file.block.lines.pluggedPerTree = 12;
    file.programme.runs = [{ start: "21:00", everyDays: 3, firstDay: 0, pulses: 4, gapMinutes: 60, minutes: 120 }];
    const parsed = parseScenario(file, demoFiles);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const { scenario } = parsed;
    const priors = defaultPriors({ block: scenario.block, soils: [scenario.soil] });
    const answer = sheet(scenario, { day: 1, draws: { source: { kind: "priors", priors, seed: 1 }, members: 2 } });
    expect(answer.everyDays).toBe(3);
    expect(answer.wateringDates).toEqual(["2025-12-04", "2025-12-07", "2025-12-10", "2025-12-13"]);
    expect(answer.latestStopMinutes).toBe(21 * 60 + 120 + 180);
    const text = sheetText(answer, sheetEnglish, format);
    expect(sheetPlain(text)).toMatch(/4 times a day: 21:00 \(30 min\), 22:30 \(30 min\), 00:00 \(30 min\), 01:30/);
    expect(sheetPlain(text)).toMatch(/Never later than 02:00 the next day\./);
    expect(sheetPlain(text)).toMatch(/8 emitters open at each tree, 12 plugged/);
    const html = sheetHtml(text, "en");
    expect(html).not.toContain("<b>Block");
    expect(html).toContain("&#60;b&#62;Block &#38; &#34;one&#34;");
  });
});
