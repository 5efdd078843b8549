import { understandStationFile } from "rootledger/weather";
import { describe, expect, test } from "vitest";
import { asked, bytes, faults, series, total, understood } from "./station-files.js";

// Every expected value is worked out by hand from the text of the case.

const accents =
  "Fecha;Temperatura máxima (°C);Lluvia (mm)\n2024-01-01;21,5;0,0\n2024-01-02;22,5;3,2\n2024-01-03;19,0;1,0\n";

describe("encodings", () => {
  const mark = (head: readonly number[], body: Uint8Array): Uint8Array => Uint8Array.from([...head, ...body]);
  const big = (text: string): Uint8Array => {
    const body = bytes(text, "utf16le");
    return body.map((_, i) => body[i ^ 1] ?? 0);
  };
  test.each([
    ["utf-8", bytes(accents)],
    ["utf-8 with byte order mark", mark([0xef, 0xbb, 0xbf], bytes(accents))],
    ["utf-16le with byte order mark", mark([0xff, 0xfe], bytes(accents, "utf16le"))],
    ["utf-16le", bytes(accents, "utf16le")],
    ["utf-16be with byte order mark", mark([0xfe, 0xff], big(accents))],
    ["utf-16be", big(accents)],
    ["latin-1", bytes(accents, "latin1")],
  ])("%s", (name, file) => {
    const read = understood(file);
    expect(read.report.encoding).toBe(name);
    expect(read.report.columns[1].header).toBe("Temperatura máxima (°C)");
    expect([...series(read, "tMaxC").values]).toEqual([21.5, 22.5, 19]);
  });

  test("Windows-1252 has letters where Latin-1 has controls", () => {
    // 0x80 is the euro sign, 0x93 and 0x94 are curly quotes (WHATWG Encoding, index windows-1252).
    const file = Uint8Array.from([
      ...bytes("date,rain mm,cost ", "latin1"),
      0x80,
      0x93,
      0x94,
      ...bytes("\n2024-01-13,1.5,2\n2024-01-14,2.5,3\n"),
    ]);
    const read = understood(file);
    expect(read.report.encoding).toBe("windows-1252");
    expect(read.report.columns[2].header).toBe("cost \u20ac\u201c\u201d");
  });

  test("an answer wins over what the bytes say", () => {
    expect(understood(bytes(accents, "latin1"), { encoding: "windows-1252" }).report.encoding).toBe("windows-1252");
  });

  test.each([
    ["a spreadsheet", [0x50, 0x4b, 0x03, 0x04, 20, 0]],
    ["a gzip archive", [0x1f, 0x8b, 8, 0]],
    ["a PDF", [0x25, 0x50, 0x44, 0x46, 0x2d]],
    ["noise", Array.from({ length: 64 }, (_, i) => (i * 7) % 29)],
  ])("%s is no text", (_, head) => {
    expect(faults(Uint8Array.from(head))).toEqual(["not-text"]);
  });

  test.each(["", " \n\n", "date,rain\n"])("an empty file: %j", (text) => {
    expect(faults(text)).toEqual(["empty-file"]);
  });
});

describe("lines and cells", () => {
  const rows = [
    ["date", "tmax C", "rain mm"],
    ["2024-05-30", "20.5", "1.5"],
    ["2024-05-31", "21.5", "0"],
    ["2024-06-01", "19.5", "2.5"],
  ];
  test.each(["\n", "\r\n", "\r"])("line ends %j", (end) => {
    const read = understood(rows.map((row) => row.join(",")).join(end));
    expect(read.report.records).toBe(3);
    expect(total(series(read, "rainMm").values)).toBe(4);
  });

  test.each([
    [",", "comma"],
    [";", "semicolon"],
    ["\t", "tab"],
    ["|", "pipe"],
    ["   ", "space"],
  ])("cells parted by %j", (sign, name) => {
    const read = understood(rows.map((row) => row.map((cell) => cell.replace(" ", "_")).join(sign)).join("\n"));
    expect(read.report.delimiter).toBe(name);
    expect(total(series(read, "tMaxC").values)).toBe(61.5);
  });

  test("blanks part the cells where commas are decimal signs", () => {
    const read = understood("Year DOY Tmax_C Rain_mm\n2024 1 18,2 0,5\n2024 2 18,3 1,0\n2024 3 18,4 0,0\n");
    expect(read.report).toMatchObject({ delimiter: "space", decimal: "comma" });
    expect([...series(read, "tMaxC").values]).toEqual([18.2, 18.3, 18.4]);
  });

  test("columns at fixed places, with blank cells", () => {
    const read = understood(
      "Date        Tmax  Rain\n2024-05-01  20.5   1.5\n2024-05-02         2.5\n2024-05-03  21.5      \n2024-05-04         0.5\n2024-05-05  19.0   0.0\n2024-05-06  19.5      \n",
    );
    expect(read.report.layout).toBe("fixed width");
    expect([...series(read, "tMaxC").values]).toEqual([20.5, Number.NaN, 21.5, Number.NaN, 19, 19.5]);
    expect([...series(read, "rainMm").values]).toEqual([1.5, 2.5, Number.NaN, 0.5, 0, Number.NaN]);
  });

  test("quoted cells hold signs and line ends; a lone quote does not swallow the file", () => {
    const read = understood(
      'date,"rain, mm","note\nof the day"\n2024-05-30,1.5,"wet, cold"\n2024-05-31,2.5,fine\n2024-06-01,0,"a\nb"\n',
    );
    expect(read.report.records).toBe(3);
    expect(total(series(read, "rainMm").values)).toBe(4);
    const lone = understood('date,rain mm,gauge\n2024-05-30,1.5,5" pipe\n2024-05-31,2.5,x\n2024-06-01,1,x\n');
    expect(lone.report.records).toBe(3);
  });

  test("the hint sep=; of a spreadsheet, a header that stands again, comments and totals", () => {
    const read = understood(
      "sep=;\nFecha;Lluvia (mm)\n13/05/2024;1,5\n14/05/2024;2,0\nFecha;Lluvia (mm)\n# gauge cleaned\n15/05/2024;0,5\nTotal;4,0\n",
    );
    expect(read.report.records).toBe(3);
    expect(total(series(read, "rainMm").values)).toBe(4);
    expect(read.report.repairs.map(({ code, count }) => [code, count])).toEqual([
      ["comment-row", 1],
      ["repeated-header", 1],
      ["totals-row", 1],
    ]);
  });

  test("group names over two columns are put before theirs", () => {
    const read = understood(
      "Fecha,Temperatura,,Lluvia\n,max,min,mm\n13/05/2024,25.5,10.5,0\n14/05/2024,26.5,11.5,1.5\n15/05/2024,24.5,9.5,0\n",
    );
    expect([...series(read, "tMaxC").values]).toEqual([25.5, 26.5, 24.5]);
    expect([...series(read, "tMinC").values]).toEqual([10.5, 11.5, 9.5]);
  });

  test("a file without a header is asked about, and read by the names answered", () => {
    const text = "2024-05-30,20.5,10.5,1.5\n2024-05-31,21.5,11.5,0\n2024-06-01,19.5,9.5,2.5\n";
    const question = asked(text);
    expect(question.key).toBe("columns");
    expect(question.evidence).toEqual(["2024-05-30 | 20.5 | 10.5 | 1.5"]);
    const read = understood(text, { columns: "date,tMaxC,tMinC,rainMm" });
    expect(total(series(read, "rainMm").values)).toBe(4);
    expect(series(read, "tMinC").values[2]).toBe(9.5);
  });

  test("a column can be named by an answer, by its header or its number", () => {
    const text = "date,A,B\n2024-05-30,20.5,1.5\n2024-05-31,21.5,0\n2024-06-01,19.5,2.5\n";
    expect(faults(text)).toEqual(["no-values"]);
    expect(total(series(understood(text, { "column:B": "rainMm" }), "rainMm").values)).toBe(4);
    expect(total(series(understood(text, { "column:3": "rainMm" }), "rainMm").values)).toBe(4);
    expect(faults(text, { "column:C": "rainMm" })).toEqual(["unknown-answer"]);
    expect(faults(text, { "column:B": "snow" })).toEqual(["wrong-answer"]);
    expect(faults(text, { colour: "red" })).toEqual(["unknown-answer"]);
    expect(faults(text, { "day-start": "9" })).toEqual(["wrong-answer"]);
  });
});

describe("numbers", () => {
  const column = (cells: readonly string[], delimiter = ";"): string =>
    `date${delimiter}pan mm\n${cells.map((cell, d) => `2024-05-${d + 10}${delimiter}${cell}`).join("\n")}\n`;
  const panOf = (cells: readonly string[], answers = {}, delimiter = ";"): number[] => [
    ...series(understood(column(cells, delimiter), answers), "panMm").values,
  ];

  test.each([
    [
      ["1,5", "0,25", "12"],
      [1.5, 0.25, 12],
    ],
    [
      ["1.5", "0.25", "12"],
      [1.5, 0.25, 12],
    ],
    [
      [",8", "1,25", "-0,0"],
      [0.8, 1.25, 0],
    ],
    [
      ["1e1", "2.5E-1", "+3.5"],
      [10, 0.25, 3.5],
    ],
    [
      ["0.125", "0.250", "1.500"],
      [0.125, 0.25, 1.5],
    ],
  ])("%j", (cells, values) => {
    expect(panOf(cells)).toEqual(values);
  });

  test.each([
    [
      ["1.234,5", "12,5"],
      [1234.5, 12.5],
    ],
    [
      ["1,234.5", "12.5"],
      [1234.5, 12.5],
    ],
    [
      ["1 234,5", "12,5"],
      [1234.5, 12.5],
    ],
    [
      ["1\u00a0234,5", "12,5"],
      [1234.5, 12.5],
    ],
    [
      ["1'234.5", "12.5"],
      [1234.5, 12.5],
    ],
    [
      ["1.234.567", "12,5"],
      [1234567, 12.5],
    ],
  ])("thousands: %j", (cells, values) => {
    const read = understood(`date;riego m3\n${cells.map((cell, d) => `2024-05-${d + 10};${cell}`).join("\n")}\n`);
    expect([...series(read, "irrigationM3").values]).toEqual(values);
  });

  test("a typographic minus sign", () => {
    const read = understood("date;tmin C\n2024-01-10;\u22125,5\n2024-01-11;\u20131,5\n2024-01-12;2,0\n");
    expect([...series(read, "tMinC").values]).toEqual([-5.5, -1.5, 2]);
  });

  test("three digits after every sign may be thousands: asked, not guessed", () => {
    const question = asked(column(["12.345", "11.250", "10.125"]));
    expect(question.key).toBe("decimal");
    expect(panOf(["12.345", "11.250"], { decimal: "point" })).toEqual([12.345, 11.25]);
  });

  test("between commas three digits after a point are decimals", () => {
    expect(panOf(["12.345", "11.250"], {}, ",")).toEqual([12.345, 11.25]);
  });

  test("as many points as commas: asked", () => {
    expect(asked(column(["1,5", "2.5"])).key).toBe("decimal");
  });

  test("units in the cells themselves", () => {
    const read = understood(
      "date;rain;temp max\n2024-05-10;0.5 in;68 °F\n2024-05-11;1 in;77 °F\n2024-05-12;0 in;86 °F\n",
    );
    expect([...series(read, "rainMm").values]).toEqual([12.7, 25.4, 0]);
    expect([...series(read, "tMaxC").values]).toEqual([20, 25, 30]);
  });

  test("words that stand for nothing", () => {
    const cells = ["NA", "n/a", "#N/A", "NaN", "null", "-", "---", "Sin dato", "*****", "#DIV/0!", "s/d", "2.5"];
    const read = understood(column(cells));
    expect(series(read, "panMm").values.filter(Number.isNaN)).toHaveLength(11);
  });

  test("a word of unknown meaning is asked about with its line", () => {
    const question = asked(column(["1.5", "leaky", "2.5"]));
    expect(question).toMatchObject({ key: "missing", evidence: ["line 3: leaky"] });
    expect(panOf(["1.5", "leaky", "2.5"], { missing: "leaky" })).toEqual([1.5, Number.NaN, 2.5]);
  });
});

test("the reader never throws on pieces of bytes", () => {
  expect(understandStationFile(new Uint8Array(0)).ok).toBe(false);
  expect(understandStationFile(Uint8Array.of(0xff, 0xfe)).ok).toBe(false);
  expect(understandStationFile(Uint8Array.of(0xe2, 0x82)).ok).toBe(false);
});
