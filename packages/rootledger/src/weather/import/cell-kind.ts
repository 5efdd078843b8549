import { newStampParts, scanStamp } from "./scan-stamp.js";
import { specialCell } from "./special-cell.js";

export type CellKind = "empty" | "number" | "stamp" | "special" | "text";

const number = /^[+\-\u2212]?(?:\d[\d.,' \u00a0]*|[.,]\d+)(?:[eE][+-]?\d{1,3})?$/;

/** What a cell looks like, before anything is known of its column. */
export function cellKind(cell: string): CellKind {
  const text = cell.trim();
  if (text === "") return "empty";
  if (text.length > 60) return "text";
  if (number.test(text) && !/\d[.]\d+[.]\d/.test(text)) return "number";
  const parts = newStampParts();
  if (/\d/.test(text) && scanStamp(text, parts) && (parts.count >= 3 || parts.hourAt >= 0 || parts.digits[0] >= 3))
    return "stamp";
  return specialCell(text) === undefined ? "text" : "special";
}

/** Kinds as they count for telling a record from a title: numbers and stamps are data, words are not. */
export const isData = (kind: CellKind): boolean => kind === "number" || kind === "stamp";
