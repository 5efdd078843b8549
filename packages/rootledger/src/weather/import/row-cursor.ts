import { dsvFormat } from "d3-dsv";
import type { Delimiter } from "./delimiter.js";
import { type NumberStyle, plainNumber, readNumber } from "./read-number.js";

/** Most columns that a file may have; own limit, against files that are no tables. */
export const mostColumns = 2000;

/**
 * The rows of a table, one at a time: `open` a row, then ask for its cells. A long file is never held as millions of small strings; numbers are
 * read where they stand in the text.
 */
export interface RowCursor {
  readonly count: number;
  /** Line of the file on which a row begins, from 1; 0 for rows that are not in the file. */
  line(row: number): number;
  /** Brings a row into view and returns how many cells it has. */
  open(row: number): number;
  /** A cell of the open row, "" beyond its end. */
  cell(c: number): string;
  isEmpty(c: number): boolean;
  /** A plain number of the open row, NaN where the cell is anything else. */
  number(c: number, style: NumberStyle): number;
}

/** All cells of a row. */
export function cellsOf(cursor: RowCursor, row: number): string[] {
  const width = cursor.open(row);
  return Array.from({ length: width }, (_, c) => cursor.cell(c));
}

/** Rows that were made by a reader of another layout. */
export function listCursor(cells: readonly (readonly string[])[], lines: readonly number[]): RowCursor {
  let open: readonly string[] = [];
  return {
    count: cells.length,
    line: (row) => lines[row],
    open(row) {
      open = cells[row];
      return open.length;
    },
    cell: (c) => open[c] ?? "",
    isEmpty: (c) => (open[c] ?? "") === "",
    number: (c, style) => readNumber(open[c] ?? "", style),
  };
}

/** Where the rows of a text begin and end, and the line of each. */
export interface RowPlaces {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly lines: readonly number[];
}

/** Rows of a text whose cells are parted by a sign. */
export function textCursor(
  text: string,
  { starts, ends, lines }: RowPlaces,
  delimiter: Delimiter,
  quoted: boolean,
): RowCursor {
  const from: number[] = [];
  const to: number[] = [];
  /** Cells of a row with quotes, which do not stand in the text as they are. */
  let unquoted: readonly string[] | undefined;
  let width = 0;
  const code = delimiter.charCodeAt(0);
  const add = (start: number, end: number): void => {
    // Beyond this a row is no row of a table, and its width is told by one cell more.
    if (width > mostColumns) return;
    from[width] = start;
    to[width] = end;
    width++;
  };
  const openPlain = (start: number, end: number): void => {
    let cell = start;
    for (let i = start; i < end; i++) {
      if (text.charCodeAt(i) !== code) continue;
      add(cell, i);
      cell = i + 1;
    }
    add(cell, end);
  };
  const openBlanks = (start: number, end: number): void => {
    let cell = -1;
    for (let i = start; i <= end; i++) {
      const at = i < end ? text.charCodeAt(i) : 0x20;
      const blank = at === 0x20 || at === 0x09 || at === 0xa0;
      if (!blank && cell < 0) cell = i;
      else if (blank && cell >= 0) {
        add(cell, i);
        cell = -1;
      }
    }
  };
  return {
    count: starts.length,
    line: (row) => lines[row],
    open(row) {
      width = 0;
      unquoted = undefined;
      const [start, end] = [starts[row], ends[row]];
      const quote = quoted ? text.indexOf('"', start) : -1;
      if (quote >= 0 && quote < end) {
        unquoted = unquote(text.slice(start, end), delimiter);
        width = unquoted.length;
      } else if (delimiter === " ") openBlanks(start, end);
      else openPlain(start, end);
      return width;
    },
    cell: (c) => (c >= width ? "" : unquoted === undefined ? text.slice(from[c], to[c]) : unquoted[c]),
    isEmpty: (c) => c >= width || (unquoted === undefined ? from[c] === to[c] : unquoted[c] === ""),
    number(c, style) {
      if (c >= width) return Number.NaN;
      if (unquoted !== undefined) return readNumber(unquoted[c], style);
      const value = plainNumber(text, from[c], to[c], style.decimal === "." ? 0x2e : 0x2c);
      return Number.isNaN(value) && style.thousands !== "" ? readNumber(text.slice(from[c], to[c]), style) : value;
    },
  };
}

function unquote(row: string, delimiter: Delimiter): readonly string[] {
  if (delimiter === " ") return [...row.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);
  return dsvFormat(delimiter).parseRows(row)[0] ?? [];
}
