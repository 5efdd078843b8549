import type { RowCursor } from "./row-cursor.js";

/** The same rows, with what stands beyond the last column joined into it: a note may hold the sign that parts the cells. */
export function joinedNotes(rows: RowCursor, width: number): RowCursor {
  let cells = 0;
  const last = width - 1;
  return {
    ...rows,
    open(row) {
      cells = rows.open(row);
      return cells > width ? width : cells;
    },
    cell(c) {
      if (c !== last || cells <= width) return c < width ? rows.cell(c) : "";
      let text = rows.cell(c);
      for (let k = c + 1; k < cells; k++) text += ` ${rows.cell(k).trim()}`;
      return text.trim();
    },
    isEmpty: (c) => c >= width || (c === last && cells > width ? false : rows.isEmpty(c)),
  };
}
