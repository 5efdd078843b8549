import { main } from "@rootledger/cli";
import { parseDailyWeather } from "rootledger/weather";
import { describe, expect, it } from "vitest";
import { dataPath } from "../support/demo-files.js";
import { memoryIo } from "../support/memory-io.js";

async function run(
  argv: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
  nowMs?: () => number,
) {
  const { io, written } = memoryIo(files, nowMs);
  return { code: await main(argv, io), ...written };
}

const messy = (name: string): string => dataPath(`messy/${name}`);
const widest = (text: string): number => Math.max(...text.split("\n").map((line) => line.length));

describe("weather FILE", () => {
  it("says how the file is written, its columns, what was assumed, changed and rejected, within 100 columns", async () => {
    const { code, stdout, stderr } = await run(["weather", messy("s02_logger_four_header_lines_nan_midnight.dat")]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(/72 records from 2023-07-01 01:00 to 2023-07-04 00:00, every 60 min/);
    expect(stdout).toMatch(/SlrW_Avg +solarMJPerM2 +W\/m2 \(unit row\) +72 +0 +0/);
    expect(stdout).toMatch(/Taken for granted\n {2}date-order: ymd/);
    expect(stdout).toMatch(/RH: above 100 %, taken as 100: 14/);
    expect(stdout).toMatch(/Rows not read\n {2}line 55: 1990-01-01/);
    expect(stdout).toMatch(/Days: 3, from 2023-07-01/);
    // File names are not broken.
    expect(widest(stdout.split("\n").slice(1).join("\n"))).toBeLessThanOrEqual(100);
  });

  it("--csv writes the plain daily file, which the library reads", async () => {
    const { code, stdout } = await run(["weather", messy("real_aemet_malaga_2009_2012.csv"), "--csv"]);
    expect(code).toBe(0);
    const parsed = parseDailyWeather(stdout);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    expect([parsed.weather.startDate, parsed.weather.days]).toEqual(["2009-01-01", 1369]);
    // "14,8" in the row of 4 January 2009.
    expect(parsed.weather.rainMm[3]).toBe(14.8);
  });

  it("--csv of a soil sensor writes its records", async () => {
    const { stdout } = await run(["weather", messy("s07_tensiometer_sheet_totals_row_duplicate_headers.csv"), "--csv"]);
    expect(stdout.split("\n").slice(0, 2)).toEqual([
      "date,soilTensionKPa_30cm,soilTensionKPa_30cm_2,soilTensionKPa_60cm,soilTensionKPa_60cm_2",
      "2023-05-01,8,4,4,4",
    ]);
    expect(stdout).toContain("2023-05-13,45,>80,27,24\n2023-05-14,0?,44,28,26\n");
  });

  it("--json gives report, days and records", async () => {
    const { stdout } = await run(["weather", messy("s16_year_doy_leap.txt"), "--json"]);
    const answer = JSON.parse(stdout);
    expect(answer.report.records).toBe(15);
    expect(answer.report.rejectedRows[0].text).toMatch(/^2023 366/);
    expect(answer.daily.weather.tMaxC).toHaveLength(372);
    expect(answer.table.columns.map(({ name }: { name: string }) => name)).toContain("rainMm");
  });

  it("several files of one place are joined by their dates", async () => {
    const names = ["max_temp", "min_temp", "one_day_precipitation"].map((what) =>
      messy(`real_eccc_william_head_${what}_1987_1992.csv`),
    );
    const { code, stdout } = await run(["weather", ...names, "--csv"]);
    expect(code).toBe(0);
    expect(stdout.split("\n").slice(0, 2)).toEqual(["date,tMinC,tMaxC,rainMm", "1987-03-01,2,9,15"]);
    expect((await run(["weather", ...names])).stdout).toMatch(/Joined: 2133 days from 1987-03-01/);
  });
});

describe("questions and faults", () => {
  it("what the file leaves open is asked on stderr, with the answers to give; nothing is written", async () => {
    const { code, stdout, stderr } = await run([
      "weather",
      messy("s14_ambiguous_day_month_two_digit_year.csv"),
      "--csv",
    ]);
    expect([code, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/Which\s+stands\s+first\?/);
    expect(stderr).toMatch(/--answer date-order=dmy {3}day first: 02\/06\/24 is 2024-06-02/);
  });

  it("--answer answers it", async () => {
    const { code, stdout } = await run([
      "weather",
      messy("s14_ambiguous_day_month_two_digit_year.csv"),
      "--csv",
      "--answer",
      "date-order=dmy",
    ]);
    expect(code).toBe(0);
    expect(stdout).toContain("2024-06-02,0.5\n");
  });

  it("an answer with blanks is shown in quotes, ready to be given", async () => {
    const text = "date,Tmax air\n2024-05-01,77\n2024-05-02,88\n2024-05-03,86\n";
    const asked = await run(["weather", "/f.csv"], { "/f.csv": text });
    expect(asked.stderr).toContain('--answer "unit:Tmax air=F"');
    const answered = await run(["weather", "/f.csv", "--csv", "--answer", "unit:Tmax air=F"], { "/f.csv": text });
    expect(answered.stdout).toContain("2024-05-01,25\n");
  });

  const cases: readonly [
    what: string,
    argv: readonly string[],
    files: Readonly<Record<string, string | Uint8Array>>,
    line: RegExp,
  ][] = [
    [
      "no such file",
      ["weather", "/nowhere.csv"],
      {},
      /^\/nowhere\.csv: received no such file; must be a file that can be read$/,
    ],
    ["an empty file", ["weather", "/f.csv"], { "/f.csv": "" }, /^\/f\.csv: received no lines; must have a header row/],
    [
      "a spreadsheet",
      ["weather", "/f.xlsx"],
      { "/f.xlsx": Uint8Array.of(0x50, 0x4b, 3, 4) },
      /^\/f\.xlsx: received a zip archive or a spreadsheet \(xlsx, ods\); must be text; save a spreadsheet as CSV first$/,
    ],
    [
      "no dates",
      ["weather", "/f.csv"],
      { "/f.csv": "rain mm,tmax C\n1,2\n3,4\n5,6\n" },
      /^\/f\.csv: received rain mm, tmax C; must have a date/,
    ],
    [
      "an unknown answer",
      ["weather", "/f.csv", "--answer", "colour=red"],
      { "/f.csv": "date,rain mm\n2024-05-01,1\n" },
      /^\/f\.csv, answer colour: received red; must have one of the keys/,
    ],
    [
      "no answer at all",
      ["weather", "/f.csv", "--answer", "dmy"],
      {},
      /^--answer: received dmy; must be a key and a value, like date-order=dmy$/,
    ],
    [
      "conflicting files",
      ["weather", "/a.csv", "/b.csv"],
      {
        "/a.csv": "date,rain mm\n2024-05-01,1\n2024-05-02,1\n",
        "/b.csv": "date,rain mm\n2024-05-01,2\n2024-05-02,1\n",
      },
      /^\/a\.csv \+ \/b\.csv: received 2024-05-01, rainMm: 1 and 2; must not disagree with another file$/,
    ],
    [
      "nothing to join",
      ["weather", "/a.csv", "/b.csv"],
      {
        "/a.csv": "date,rain mm\n2024-05-01,1\n2024-05-02,1\n",
        "/b.csv": "date,tension 30cm kPa\n2024-05-01,2\n2024-05-02,1\n",
      },
      /^\/b\.csv: received no days; must hold daily weather/,
    ],
    ["no file", ["weather"], {}, /^a file is needed; see rootledger --help$/],
    ["two outputs", ["weather", "/f.csv", "--csv", "--json"], {}, /^--json, --csv and --schema exclude one another/],
    [
      "an answer to another command",
      ["simulate", "x.json", "--answer", "a=b"],
      {},
      /^--answer is no option of simulate/,
    ],
  ];
  it.each(cases)("%s: one line, exit 1, nothing written", async (_, argv, files, line) => {
    const { code, stdout, stderr } = await run(argv, files);
    expect([code, stdout]).toEqual([1, ""]);
    expect(stderr.trimEnd().split("\n")).toEqual([expect.stringMatching(line)]);
  });

  it("tells its stages when they take more than two seconds, and is silent before", async () => {
    let clock = 0;
    const slow = await run(["weather", messy("s16_year_doy_leap.txt")], {}, () => {
      clock += 1500;
      return clock;
    });
    expect(slow.stderr).toMatch(/^still computing: .*s16_year_doy_leap\.txt: finding rows and columns, 10 %\n/);
    expect((await run(["weather", messy("s16_year_doy_leap.txt")])).stderr).toBe("");
  });
});
