import fc from "fast-check";
import {
  formatDailyWeather,
  formatStationTable,
  parseDailyWeather,
  quantities,
  type Understood,
  understandStationFile,
  weatherColumns,
} from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { damagedFile, soup, stationText } from "./arbitrary-station-file.js";

const bytes = (text: string): Uint8Array => new Uint8Array(Buffer.from(text));

/** Runs can be raised by a script: STATION_FILE_RUNS=1000000 npx vitest ... */
const runs = Number(process.env.STATION_FILE_RUNS ?? 20_000);

/** Either a sound table with its report, or one question with choices, or faults with all four parts. */
function soundness(read: Understood): string {
  if (!read.ok) {
    if (read.question !== undefined) {
      const { key, text, choices } = read.question;
      return key !== "" && text !== "" && choices.length > 0 ? "" : "a question without key, text or choices";
    }
    const complete =
      read.faults.length > 0 && read.faults.every(({ code, rule }) => /^[a-z0-9-]+$/.test(code) && rule !== "");
    return complete ? "" : "faults without code or rule";
  }
  const { table, report, daily } = read;
  const { minutes, columns } = table;
  if (minutes.length === 0 || columns.length === 0) return "an empty table";
  for (let i = 0; i < minutes.length; i++) {
    if (!Number.isFinite(minutes[i])) return "a stamp that is no number";
    if (i > 0 && minutes[i] <= minutes[i - 1]) return "stamps out of order";
  }
  for (const { name, quantity, values, marks } of columns) {
    const { lowest, highest } = quantities[quantity];
    if (values.length !== minutes.length || marks.length !== minutes.length) return `${name}: wrong length`;
    for (const value of values)
      if (!Number.isNaN(value) && !(value >= lowest && value <= highest))
        return `${name}: ${value} is outside its limits`;
  }
  if (new Set(columns.map(({ name }) => name)).size !== columns.length) return "two series of one name";
  if (report.records < 1 || report.columns.length === 0) return "an empty report";
  if (daily !== undefined && weatherColumns.some((column) => daily.weather[column].length !== daily.weather.days))
    return "days of unequal length";
  return "";
}

describe("any file", () => {
  test(`${runs} inputs: each is read, asked about or refused; none throws or hangs`, {
    timeout: Math.max(120_000, runs * 6),
  }, () => {
    const share = (part: number): fc.Parameters<unknown> => ({ numRuns: Math.ceil(runs * part) });
    const outcomes = { read: 0, asked: 0, refused: 0 };
    const answered = (file: Uint8Array): void => {
      const read = understandStationFile(file);
      outcomes[read.ok ? "read" : read.question ? "asked" : "refused"]++;
      expect(soundness(read)).toBe("");
    };
    const start = performance.now();
    fc.assert(
      fc.property(stationText, (text) => answered(bytes(text))),
      share(0.4),
    );
    fc.assert(fc.property(damagedFile, answered), share(0.3));
    fc.assert(fc.property(soup, answered), share(0.3));
    const { read, asked, refused } = outcomes;
    console.log(
      `station files: ${read} read, ${asked} asked about, ${refused} refused in ${((performance.now() - start) / 1000).toFixed(1)} s`,
    );
    expect(read).toBeGreaterThan(0.1 * runs);
    expect(asked).toBeGreaterThan(0.01 * runs);
  });
});

describe("a file that was read", () => {
  /** Answers every question with its first choice, until the file is read or refused. */
  function answeredThrough(file: Uint8Array): Understood {
    const answers: Record<string, string> = {};
    let read = understandStationFile(file, answers);
    for (let turn = 0; turn < 12 && !read.ok && read.question !== undefined; turn++) {
      const { key, choices } = read.question;
      answers[key] =
        answers[key] === undefined || key !== "missing" ? choices[0].value : `${answers[key]},${choices[0].value}`;
      read = understandStationFile(file, answers);
    }
    return read;
  }

  const same = (read: Extract<Understood, { ok: true }>): void => {
    const text = formatStationTable(read.table);
    const again = understandStationFile(bytes(text));
    if (!again.ok) throw new Error(`${JSON.stringify(again)}\n${text.slice(0, 600)}`);
    const bare = (table: typeof read.table) => ({
      ...table,
      columns: table.columns.map(({ header, sensorChanges, ...rest }) => rest),
    });
    expect(bare(again.table)).toEqual(bare(read.table));
    expect(formatStationTable(again.table)).toBe(text);
  };

  test("written as plain CSV and read again is the same table, bit for bit, without any answer", () => {
    let compared = 0;
    const check = (file: Uint8Array): void => {
      const read = answeredThrough(file);
      if (!read.ok) return;
      compared++;
      same(read);
    };
    fc.assert(
      fc.property(stationText, (text) => check(bytes(text))),
      { numRuns: 1500 },
    );
    fc.assert(fc.property(damagedFile, check), { numRuns: 500 });
    expect(compared).toBeGreaterThan(1000);
  });

  test("its days, written as the plain daily file, are the same days for both readers", () => {
    fc.assert(
      fc.property(stationText, (text) => {
        const read = answeredThrough(bytes(text));
        if (!read.ok || read.daily === undefined || read.daily.weather.days === 0) return;
        const { weather } = read.daily;
        const csv = formatDailyWeather(weather);
        const again = understandStationFile(bytes(csv));
        if (again.ok && again.daily) expect(formatDailyWeather(again.daily.weather)).toBe(csv);
        const plain = parseDailyWeather(csv, { rain: "dry" });
        if (plain.ok) expect(plain.weather.startDate).toBe(weather.startDate);
      }),
      { numRuns: 500 },
    );
  });
});
