/** Width that every table and text keeps to, characters. */
export const pageWidth = 100;

/** Rows of cells under one another: the first column left, the others right-aligned, two blanks between. */
export function textTable(rows: readonly (readonly string[])[], firstWidth = 0): string {
  const widths: number[] = [firstWidth];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, cell.length);
    });
  const line = (row: readonly string[]): string =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[i] ?? 0))).join("  ");
  return rows.map((row) => `${line(row).trimEnd()}\n`).join("");
}

/** Text broken between words to the page width; lines after the first start with `indent`. */
export function wrapped(text: string, indent = ""): string {
  let out = "";
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > pageWidth) {
      out += `${line}\n`;
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return `${out}${line}\n`;
}
