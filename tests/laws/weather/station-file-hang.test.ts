import { understandStationFile } from "rootledger/weather";
import { expect, test } from "vitest";

const megabytes = 3;

const repeated = (piece: string, head = ""): Uint8Array =>
  new Uint8Array(Buffer.from(head + piece.repeat(Math.ceil((megabytes * 1e6) / piece.length))));

let state = 1;
const noise = Uint8Array.from({ length: megabytes * 1e6 }, () => {
  state = (Math.imul(state, 1103515245) + 12345) >>> 0;
  return state >>> 24;
});

// Files made to be slow for a reader that goes over a cell, a row or a column again and again. Each must end in time that grows with its length;
// the limit is far above what it takes, and far below what a square of the length would take.
test.each([
  ["one row of commas", repeated(",")],
  ["rows of commas", repeated(`${",".repeat(1500)}\n`)],
  ["quotes", repeated('"')],
  ["one endless quoted cell", repeated("a,b\n", 'date,rain\n"')],
  ["brackets", repeated("[")],
  ["objects in objects", repeated('{"a":')],
  ["digits", repeated("1")],
  ["line ends", repeated("\r\n")],
  ["blanks", repeated(" ")],
  ["noise", noise],
  ["a header, and rows that are none", repeated("x,1\n", "date,rain mm\n")],
  ["the same day again and again", repeated("2024-05-01,1\n", "date,rain mm\n")],
  ["two days in turn", repeated("2024-05-01,1\n2024-05-02,1\n", "date,rain mm\n")],
  ["a hundred thousand titles", repeated("Latitude Station Month 2024 (mm)\n")],
  ["rows wider than the header", repeated("2024-05-01,1,2,3\n", "date,rain mm\n")],
  ["long words", repeated(`${"temperatur".repeat(200)},2024-05-01\n`)],
  ["NUL bytes", repeated("\u0000")],
])("%s: ends in time", (_, file) => {
  const start = performance.now();
  const read = understandStationFile(file);
  expect(performance.now() - start).toBeLessThan(20_000);
  expect(read.ok || read.question !== undefined || read.faults.length > 0).toBe(true);
});
