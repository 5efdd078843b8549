import { main } from "@rootledger/cli";
import { describe, expect, it } from "vitest";
import { dataPath, dataText, demoJson, type Editable } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

const weather = dataText("demo/weather.csv");

/** Runs a command on a file and its weather held in memory. */
async function run(command: string, text: string, csv: string | null = weather) {
  const files = { "/block/file.json": text, ...(csv === null ? {} : { "/block/weather.csv": csv }) };
  const { io, written } = memoryIo(files);
  const code = await main([command, "/block/file.json"], io);
  return { code, ...written, lines: written.stderr.split("\n").filter((line) => line !== "") };
}

const spoiled = (spoil: (file: Editable) => void): string => {
  const file = demoJson("scenario");
  spoil(file);
  return JSON.stringify(file);
};

const cases: readonly [what: string, text: string, csv: string | null, line: RegExp][] = [
  [
    "malformed JSON",
    '{\n  "format": 1,\n  "name": }',
    weather,
    /^\/block\/file\.json: received "\}" at line 3, column 11; must be JSON$/,
  ],
  ["an empty file", " \n", weather, /^\/block\/file\.json: received an empty file; must be JSON$/],
  ["not an object", "[]", weather, /^the file: received an empty list; must be an object$/],
  ["a missing part", spoiled((f) => delete f.soil), weather, /^soil: received nothing; is required: an object$/],
  [
    "negative flow",
    spoiled((f) => {
      f.block.lines.emitterFlowLPerH = -1.6;
    }),
    weather,
    /^block\.lines\.emitterFlowLPerH: received -1\.6; must be above 0$/,
  ],
  [
    "layers out of order",
    spoiled((f) => {
      f.soil.horizons = [
        { toCm: 70, texture: "clay" },
        { toCm: 60, texture: "sand" },
      ];
    }),
    weather,
    /^soil\.horizons\[1\]\.toCm: received 60; must be at least 1 cm deeper/,
  ],
  [
    "an unknown key",
    spoiled((f) => {
      f.block.treeSpacing = 4;
    }),
    weather,
    /^block\.treeSpacing: received 4; is not a known key here; did you mean treeSpacingM\?$/,
  ],
  [
    "no weather file",
    spoiled(() => {}),
    null,
    /^weather\.file: received "weather\.csv"; must name a weather file that can be read$/,
  ],
  [
    "an empty weather file",
    spoiled(() => {}),
    "",
    /^weather\.csv: received 0 rows; must have a header row and at least one day$/,
  ],
  [
    "a gap in the weather",
    spoiled(() => {}),
    weather.replace(/^2025-12-24.*\n/m, ""),
    /^weather\.csv line 86, date: received .*2025-12-25.*; must/,
  ],
  [
    "Tmin above Tmax",
    spoiled(() => {}),
    weather.replace("2025-10-02,9.2,", "2025-10-02,29.2,"),
    /^weather\.csv line 3, tMinC: received 29\.2; must not be above tMaxC, 22\.8$/,
  ],
  [
    "missing rain",
    spoiled(() => {}),
    weather.replace(/^(2025-10-02.*),0$/m, "$1,"),
    /^weather\.csv line 3, rainMm: received nothing; is required on every day/,
  ],
];

describe("bad input: one clear line, exit code 1, nothing written", () => {
  it.each(cases)("%s", async (_, text, csv, line) => {
    for (const command of ["simulate", "validate-scenario"]) {
      const { code, stdout, lines } = await run(command, text, csv);
      expect(code, command).toBe(1);
      expect(stdout, command).toBe("");
      expect(lines, command).toHaveLength(1);
      expect(lines[0], command).toMatch(line);
    }
  });

  it("a comparison with several faults: a line for each", async () => {
    const file = demoJson("comparison");
    file.programmes[1].runs[0].pulses = 99;
    file.soils[0].horizons[0].texture = "klay";
    file.remarks = file.remark;
    const { code, stdout, lines } = await run("compare", JSON.stringify(file));
    expect({ code, stdout }).toEqual({ code: 1, stdout: "" });
    expect(lines.map((text) => text.split(":")[0])).toEqual([
      "programmes[1].runs[0].pulses",
      "remarks",
      "soils[0].horizons[0].texture",
    ]);
  });

  it("a file that is not there, and a folder", async () => {
    for (const [file, reason] of [
      ["/no/such.json", "no such file"],
      [dataPath("demo"), "a folder"],
    ] as const) {
      const { io, written } = memoryIo();
      expect(await main(["compare", file], io)).toBe(1);
      expect(written).toEqual({ stdout: "", stderr: `${file}: received ${reason}; must be a file that can be read\n` });
    }
  });

  it("a scenario given to compare", async () => {
    const { code, lines } = await run(
      "compare",
      spoiled(() => {}),
    );
    expect(code).toBe(1);
    expect(lines.map((text) => text.split(":")[0])).toEqual(
      expect.arrayContaining(["soils", "programmes", "soil", "programme"]),
    );
  });
});

describe("arguments", () => {
  it.each([
    [[], /^no command given; see rootledger --help$/],
    [["irrigate", "x.json"], /^unknown command irrigate; see rootledger --help$/],
    [["constructor", "x.json"], /^unknown command constructor;/],
    [["compare"], /^exactly one file is needed;/],
    [["compare", "a.json", "b.json"], /^exactly one file is needed;/],
    [["compare", "a.json", "--jsn"], /^Unknown option '--jsn'; see rootledger --help$/],
    [["ensemble", "a.json", "--members", "-3"], /ambiguous.* use '--members=-XYZ'; see/],
    [["compare", "a.json", "--json", "--csv"], /exclude one another/],
    [["validate-scenario", "a.json", "--csv"], /has no --csv/],
  ])("%j", async (argv, line) => {
    const { io, written } = memoryIo();
    expect(await main(argv, io)).toBe(1);
    expect(written.stdout).toBe("");
    expect(written.stderr.trimEnd()).toMatch(line);
    expect(written.stderr.trimEnd().split("\n")).toHaveLength(1);
  });

  it("an error of our own ends with 2", async () => {
    const { io, written } = memoryIo({
      "/block/file.json": JSON.stringify(demoJson("scenario")),
      "/block/weather.csv": weather,
    });
    const broken = {
      ...io,
      nowMs: () => {
        throw new Error("the clock is broken");
      },
    };
    expect(await main(["simulate", "/block/file.json"], broken)).toBe(2);
    expect(written).toEqual({ stdout: "", stderr: "rootledger: internal error: the clock is broken\n" });
  });
});
