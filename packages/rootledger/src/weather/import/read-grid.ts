import type { StationAnswers } from "./answers.js";
import { type Delimiter, delimiterNames, findDelimiter, sampleLines } from "./delimiter.js";
import { splitFixedWidth } from "./fixed-width.js";
import { isGhcnDaily, readGhcnDaily } from "./ghcn-daily.js";
import { readJsonRows } from "./json-rows.js";
import { looksLikeUscrnDaily, uscrnDailyNames } from "./known-layouts.js";
import { cellsOf, listCursor, mostColumns, type RowCursor } from "./row-cursor.js";
import { cursorOf, splitRows } from "./split-rows.js";
import type { Repair } from "./station-report.js";
import { fault, isStop, type Stop } from "./stop.js";

/** A file as rows of cells. */
export interface Grid {
  readonly rows: RowCursor;
  readonly layout: string;
  readonly delimiter: string;
  readonly repairs: readonly Repair[];
}

/** Splits a text into rows of cells by what it is: JSON, GHCN daily, delimited, or columns at fixed places. */
export function readGrid(text: string, answers: StationAnswers): Grid | Stop {
  const grid = gridOf(text, answers);
  if (isStop(grid)) return grid;
  if (grid.rows.count < 2)
    return fault("empty-file", "", `${grid.rows.count} rows`, "must have a header row and at least one record");
  let widest = 0;
  for (let r = 0; r < grid.rows.count && widest <= mostColumns; r++) widest = Math.max(widest, grid.rows.open(r));
  if (widest > mostColumns)
    return fault(
      "too-many-columns",
      "",
      `${widest} cells in a row or more`,
      `must have at most ${mostColumns} columns`,
    );
  return grid;
}

function gridOf(text: string, answers: StationAnswers): Grid | Stop {
  const start = text.trimStart().charAt(0);
  if (start === "[" || start === "{") {
    const rows = readJsonRows(text);
    return isStop(rows) ? rows : { rows: cursorOf(rows), layout: "JSON", delimiter: "", repairs: [] };
  }
  if (isGhcnDaily(text)) return ghcnGrid(text);
  const hinted = /^sep=([;,\t|])\s*[\r\n]/i.exec(text);
  const body = hinted ? text.slice(hinted[0].length) : text;
  const lines = sampleLines(body, 240);
  if (lines.length === 0) return fault("empty-file", "", "no lines", "must have a header row and at least one record");
  const answered = answers.delimiter;
  const named = (Object.keys(delimiterNames) as Delimiter[]).find((one) => delimiterNames[one] === answered);
  const delimiter = named ?? (hinted?.[1] as Delimiter | undefined) ?? findDelimiter(lines);
  if (delimiter === undefined) {
    const fixed = splitFixedWidth(body, lines);
    if (fixed === undefined)
      return fault("no-table", "line 1", lines[0], "must have two or more columns; name the delimiter if there are");
    return { rows: cursorOf(fixed), layout: "fixed width", delimiter: "", repairs: [] };
  }
  const rows = splitRows(body, delimiter);
  if (rows.count > 0 && looksLikeUscrnDaily(cellsOf(rows, 0))) {
    return { rows: withHeader(uscrnDailyNames, rows), layout: "fixed width", delimiter: "space", repairs: [] };
  }
  if (delimiter === " " && unevenBlanks(rows)) {
    const fixed = splitFixedWidth(body, lines);
    if (fixed !== undefined) return { rows: cursorOf(fixed), layout: "fixed width", delimiter: "", repairs: [] };
  }
  return { rows, layout: "delimited", delimiter: delimiterNames[delimiter], repairs: [] };
}

/** More than a tenth of the rows have another number of cells than most: some cells may be blank. */
function unevenBlanks(rows: RowCursor): boolean {
  const tally = new Map<number, number>();
  for (let r = 0; r < rows.count; r++) {
    const width = rows.open(r);
    tally.set(width, (tally.get(width) ?? 0) + 1);
  }
  return Math.max(...tally.values()) < 0.9 * rows.count && rows.count > 4;
}

/** The rows of a file that has no header, below the names that its layout gives. */
function withHeader(names: readonly string[], rows: RowCursor): RowCursor {
  const header = listCursor([names], [0]);
  let open = header;
  return {
    count: rows.count + 1,
    line: (row) => (row === 0 ? 0 : rows.line(row - 1)),
    open(row) {
      open = row === 0 ? header : rows;
      return open.open(row === 0 ? 0 : row - 1);
    },
    cell: (c) => open.cell(c),
    isEmpty: (c) => open.isEmpty(c),
    number: (c, style) => open.number(c, style),
  };
}

function ghcnGrid(text: string): Grid | Stop {
  const read = readGhcnDaily(text);
  if (read.stations.size > 1)
    return fault("several-stations", "", [...read.stations].slice(0, 3).join(", "), "must hold one station");
  const { failedQuality, failedLines } = read;
  const failed: Repair = {
    code: "out-of-range",
    column: "",
    count: failedQuality,
    what: "values with a quality flag, taken as missing",
    lines: failedLines.slice(0, 8),
  };
  return {
    rows: cursorOf(read.rows),
    layout: "GHCN daily",
    delimiter: "",
    repairs: failedQuality === 0 ? [] : [failed],
  };
}
