import { type CellKind, cellKind, isData } from "./cell-kind.js";
import { roleOfHeader } from "./header-words.js";
import { normalText } from "./normal-text.js";
import { cellsOf, type RowCursor } from "./row-cursor.js";
import { unitsWritten } from "./unit.js";

/** Where the records begin, and what stands above them. */
export interface HeaderBlock {
  /** Index of the first record. */
  readonly firstRecord: number;
  /** Names of the columns; empty where the file has none. */
  readonly names: readonly string[];
  readonly unitCells: readonly string[];
  /** Rows above the names, and between them and the records what is neither names nor units. */
  readonly titles: readonly (readonly string[])[];
  readonly width: number;
}

/** Finds the first record: the first row whose cells are of the kinds that most rows have. */
export function findHeader(rows: RowCursor): HeaderBlock {
  // Titles stand at the top: what most rows are is seen in the lower two thirds.
  const sample = spreadRows(rows, Math.floor(rows.count / 3), 120).filter((row) => !isComment(row));
  const width = modalWidth(sample);
  const modal = modalKinds(sample, width);
  let firstRecord = 0;
  while (firstRecord < rows.count && !isRecord(cellsOf(rows, firstRecord), width, modal)) firstRecord++;
  const above = Array.from({ length: Math.min(firstRecord, mostAbove) }, (_, r) => cellsOf(rows, r));
  if (firstRecord === rows.count) firstRecord = -1;
  const named = namesRow(above, width);
  if (named === undefined) return { firstRecord, names: [], unitCells: [], titles: above, width };
  const after = above.slice(named.at + 1);
  const unitCells = after.find((row) => looksLikeUnits(row)) ?? [];
  const titles = above.filter((_, index) => index < named.at - (named.grouped ? 1 : 0));
  return { firstRecord, names: named.names, unitCells, titles, width };
}

/** Rows above the records that are looked at. */
const mostAbove = 200;

const isComment = (row: readonly string[]): boolean => (row[0] ?? "").startsWith("#") && row[0].trim().length > 1;

/** About so many rows, evenly spread from a row on. */
export function spreadRows(rows: RowCursor, from: number, most: number): string[][] {
  const step = Math.max(1, Math.floor((rows.count - from) / most));
  const spread: string[][] = [];
  for (let r = from; r < rows.count; r += step) spread.push(cellsOf(rows, r));
  return spread;
}

function modalWidth(rows: readonly (readonly string[])[]): number {
  const tally = new Map<number, number>();
  for (const row of rows) tally.set(row.length, (tally.get(row.length) ?? 0) + 1);
  let width = 0;
  let most = 0;
  for (const [one, count] of tally) {
    if (count > most || (count === most && one > width)) {
      most = count;
      width = one;
    }
  }
  return width;
}

type Modal = readonly { readonly kind: CellKind; readonly share: number }[];

/** Of each column the most frequent kind of the filled cells. */
function modalKinds(rows: readonly (readonly string[])[], width: number): Modal {
  const full = rows.filter((row) => row.length === width);
  return Array.from({ length: Math.min(width, 2000) }, (_, c) => {
    const tally = new Map<CellKind, number>();
    for (const row of full) {
      const kind = cellKind(row[c]);
      if (kind !== "empty") tally.set(kind, (tally.get(kind) ?? 0) + 1);
    }
    let best: { kind: CellKind; share: number } = { kind: "empty", share: 0 };
    for (const [kind, count] of tally) {
      const share = count / full.length;
      if (share > best.share || (share === best.share && isData(kind))) best = { kind, share };
    }
    return best;
  });
}

/** A record has data where most rows have data; a title or header has words there. */
function isRecord(row: readonly string[], width: number, modal: Modal): boolean {
  if (isComment(row) || row.length > width + 2) return false;
  let data = 0;
  let words = 0;
  let stamped = false;
  for (let c = 0; c < row.length && c < modal.length; c++) {
    if (!isData(modal[c].kind)) continue;
    const kind = cellKind(row[c]);
    if (kind === "stamp" && modal[c].kind === "stamp" && modal[c].share > 0.9) stamped = true;
    if (isData(kind)) data++;
    else if (kind === "text") words++;
    if (kind === "text" && modal[c].kind === "stamp" && modal[c].share > 0.6) return false;
  }
  const expected = modal.filter(({ kind, share }) => isData(kind) && share > 0.5).length;
  if (stamped) return true;
  return data >= 1 && data > words && data >= Math.min(2, expected);
}

interface Named {
  readonly at: number;
  readonly names: readonly string[];
  readonly grouped: boolean;
}

/** The row above the records that names most columns; group names over two or more columns are put before theirs. */
function namesRow(above: readonly (readonly string[])[], width: number): Named | undefined {
  let best: (Named & { readonly score: number }) | undefined;
  above.forEach((row, at) => {
    if (isComment(row) || filled(row) < Math.min(2, width)) return;
    const plain = { at, names: row, grouped: false, score: nameScore(row) };
    const group = above[at - 1];
    const joined = group === undefined || filled(group) < 2 || isComment(group) ? undefined : joinGroups(group, row);
    const grouped =
      joined === undefined ? undefined : { at, names: joined, grouped: true, score: nameScore(joined) - 0.5 };
    const found = grouped !== undefined && grouped.score > plain.score ? grouped : plain;
    if (best === undefined || found.score > best.score) best = found;
  });
  if (best !== undefined && best.score > 0) return best;
  // Names that say nothing known are still names if they are as many as the cells of a record.
  for (let at = above.length - 1; at >= 0; at--) {
    const row = above[at];
    const named = row.length === width && filled(row) > width / 2 && row.every((cell) => !isData(cellKind(cell)));
    if (named) return { at, names: row, grouped: false };
  }
  return undefined;
}

const filled = (row: readonly string[]): number => row.reduce((count, cell) => count + (cell.trim() === "" ? 0 : 1), 0);

const nameScore = (row: readonly string[]): number =>
  row.reduce(
    (score, cell) => score + (cell.trim() !== "" && cell.length < 150 && roleOfHeader(cell).kind !== "other" ? 1 : 0),
    0,
  );

function joinGroups(group: readonly string[], row: readonly string[]): string[] {
  let current = "";
  return row.map((name, c) => {
    const over = group[c]?.trim() ?? "";
    if (over !== "") current = over;
    return current === "" ? name : `${current} ${name}`;
  });
}

const formats = /^[dtjmyahs]{1,4}([./: -][dtjmyahs]{1,4})+$/;
const statistics: ReadonlySet<string> = new Set(["avg", "smp", "tot", "max", "min", "ts", "rn", "std", "sum", "mean"]);

/** Half or more of the filled cells are units, date formats or the words of a statistic. */
function looksLikeUnits(row: readonly string[]): boolean {
  const cells = row.map((cell) => cell.trim()).filter((cell) => cell !== "");
  const units = cells.filter((cell) => unitsWritten(cell).length > 0).length;
  const formal = cells.filter((cell) => formats.test(cell.toLowerCase()) || statistics.has(normalText(cell))).length;
  return units > 0 && units + formal >= cells.length / 2;
}
