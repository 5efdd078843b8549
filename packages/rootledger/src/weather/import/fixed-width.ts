import type { Rows } from "./split-rows.js";
import { linesOf } from "./split-rows.js";

/**
 * Cells of a file whose columns stand at fixed places: they are parted where every sampled line has a blank. Undefined where fewer than two
 * columns come out. For files in which a missing value is blank, so that blanks alone do not count the cells.
 */
export function splitFixedWidth(text: string, sample: readonly string[]): Rows | undefined {
  const width = Math.max(0, ...sample.map((line) => line.length));
  if (width === 0 || width > 2000) return undefined;
  const lines = sample.filter((line) => line.length > width / 2);
  const inked = new Uint8Array(width);
  for (const line of lines) for (let i = 0; i < line.length; i++) if (line.charCodeAt(i) > 0x20) inked[i] = 1;
  const columns: [from: number, to: number][] = [];
  for (let i = 0; i < width; i++) {
    if (inked[i] === 0) continue;
    const last = columns.at(-1);
    if (last !== undefined && last[1] === i) last[1] = i + 1;
    else columns.push([i, i + 1]);
  }
  if (columns.length < 2) return undefined;
  const rows: Rows = { cells: [], lines: [] };
  linesOf(text).forEach((line, index) => {
    if (line.trim() === "") return;
    rows.cells.push(columns.map(([from, to]) => line.slice(from, to).trim()));
    rows.lines.push(index + 1);
  });
  return rows;
}
