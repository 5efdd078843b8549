import type { Delimiter } from "./delimiter.js";
import { listCursor, type RowCursor, textCursor } from "./row-cursor.js";

/** Rows of cells with the line on which each begins, as the readers of single layouts make them. */
export interface Rows {
  readonly cells: (readonly string[])[];
  readonly lines: number[];
}

export const cursorOf = ({ cells, lines }: Rows): RowCursor => listCursor(cells, lines);

/**
 * Finds the rows of a text; blank lines are left out. Quotes are honoured where they pair up, also over line ends; an odd number of them in a file are inch marks or
 * damage and are left in the cells.
 */
export function splitRows(text: string, delimiter: Delimiter): RowCursor {
  let quotes = 0;
  for (let at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) quotes++;
  const quoted = quotes > 0 && quotes % 2 === 0;
  const starts: number[] = [];
  const ends: number[] = [];
  const lines: number[] = [];
  let start = 0;
  let line = 1;
  let startLine = 1;
  let inked = false;
  let inQuotes = false;
  const length = text.length;
  for (let i = 0; i <= length; i++) {
    const code = i < length ? text.charCodeAt(i) : 0x0a;
    if (code > 0x20) {
      inked = true;
      if (code === 0x22 && quoted) inQuotes = !inQuotes;
      continue;
    }
    if (code !== 0x0a && code !== 0x0d) continue;
    const crlf = code === 0x0d && text.charCodeAt(i + 1) === 0x0a;
    if (inQuotes && i < length) {
      if (!crlf) line++;
      continue;
    }
    if (inked) {
      starts.push(start);
      ends.push(i);
      lines.push(startLine);
    }
    if (crlf) i++;
    start = i + 1;
    line++;
    startLine = line;
    inked = false;
  }
  return textCursor(text, { starts, ends, lines }, delimiter, quoted);
}

export const linesOf = (text: string): string[] => text.split(/\r\n|\n|\r/);
