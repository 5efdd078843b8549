import { normalText } from "./normal-text.js";
import { mostRejectedKept, type RejectedRows, rejectedRow } from "./rejected-rows.js";
import type { RowCursor } from "./row-cursor.js";
import type { RejectedRow, Repair, RepairCode } from "./station-report.js";

/** The rows below the header that may be records. */
export interface Body {
  readonly rows: RowCursor;
  /** Their places among the rows of the file. */
  readonly places: readonly number[];
  readonly repairs: readonly Repair[];
  /** Rows with more filled cells than the header has names. */
  readonly tooWide: RejectedRows;
}

const totals =
  /^(total|totals|totales|sum|summe|suma|soma|somme|average|avg|mean|promedio|media|medio|mittel|mittelwert|moyenne|max|maximum|maximo|min|minimum|minimo|std|stdev|count|anzahl|n|desv|monatssumme|monatsmittel)\b/;

/** Leaves out comments, the header when it stands again among the records, and rows of totals and means; all are counted. */
export function bodyRows(rows: RowCursor, firstRecord: number, names: readonly string[]): Body {
  const places: number[] = [];
  const wide: RejectedRow[] = [];
  let wideCount = 0;
  const dropped: Record<keyof typeof leftOut, number[]> = {
    "comment-row": [],
    "repeated-header": [],
    "totals-row": [],
  };
  const firstNames = names.slice(0, 3).map((name) => name.trim());
  const firstName = firstNames.find((name) => name !== "");
  for (let r = firstRecord; r < rows.count; r++) {
    const width = rows.open(r);
    const first = firstFilled(rows, width);
    if (first === "") continue;
    const line = rows.line(r);
    if (first.startsWith("#") && first.length > 1 && !rows.isEmpty(0)) dropped["comment-row"].push(line);
    else if (first === firstName && firstNames.every((name, c) => name === rows.cell(c).trim()))
      dropped["repeated-header"].push(line);
    else if (mayBeWord(first) && totals.test(normalText(first))) dropped["totals-row"].push(line);
    else if (width > names.length && filledBeyond(rows, names.length, width)) {
      wideCount++;
      if (wide.length < mostRejectedKept) wide.push(rejectedRow(rows, r, "more cells than the header has names"));
    } else places.push(r);
  }
  const repairs = (Object.keys(dropped) as (keyof typeof dropped)[])
    .filter((code) => dropped[code].length > 0)
    .map((code) => repair(code, "", dropped[code], leftOut[code]));
  return { rows, places, repairs, tooWide: { count: wideCount, first: wide } };
}

const leftOut = {
  "comment-row": "comments among the records left out",
  "repeated-header": "the header stands again among the records, left out",
  "totals-row": "rows of totals or means left out",
};

/** A repair with its count and the lines of the first eight. */
export const repair = (code: RepairCode, column: string, lines: readonly number[], what: string): Repair => ({
  code,
  column,
  count: lines.length,
  what,
  lines: lines.slice(0, 8),
});

function firstFilled(rows: RowCursor, width: number): string {
  for (let c = 0; c < width; c++) {
    if (rows.isEmpty(c)) continue;
    const text = rows.cell(c).trim();
    if (text !== "") return text;
  }
  return "";
}

function filledBeyond(rows: RowCursor, from: number, width: number): boolean {
  for (let c = from; c < width; c++) if (rows.cell(c).trim() !== "") return true;
  return false;
}

const mayBeWord = (text: string): boolean => {
  const code = text.charCodeAt(0);
  return (code >= 0x41 && code <= 0x7a) || code >= 0xc0;
};
