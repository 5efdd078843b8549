/** Width that every table and text keeps to, characters. */
const pageWidth = 100;

const narrowest = 6;
const between = "  ";

/**
 * A title line with group names, then rows of cells: the first column left, the others right-aligned. A group name ends
 * over the column it is given for and may reach over the empty ones before it.
 */
export function textTable(title: string, groups: readonly string[], rows: readonly (readonly string[])[]): string {
  const count = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => {
    const least = i === 0 ? title.length : narrowest;
    return Math.max(least, ...rows.map((row) => row[i]?.length ?? 0));
  });
  let covered = 0;
  groups.forEach((group, i) => {
    const width = widths[i + 1] ?? 0;
    covered += between.length + width;
    if (group === "") return;
    widths[i + 1] = Math.max(width, width + group.length + between.length - covered);
    covered = 0;
  });
  let head = title;
  let end = widths[0] ?? 0;
  groups.forEach((group, i) => {
    end += between.length + (widths[i + 1] ?? 0);
    if (group !== "") head = `${head}${between}`.padEnd(end - group.length) + group;
  });
  const line = (row: readonly string[]): string =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join(between)
      .trimEnd();
  return [head, ...rows.map(line)].map((text) => `${text}\n`).join("");
}

/** Text broken between words to the page width; every line starts with `indent`, the first with `first` if given. */
export function wrapped(text: string, indent = "", first = indent): string {
  let out = "";
  let line = first;
  let empty = true;
  for (const word of text.split(" ")) {
    if (!empty && line.length + 1 + word.length > pageWidth) {
      out += `${line}\n`;
      line = indent;
      empty = true;
    }
    line = empty ? line + word : `${line} ${word}`;
    empty = false;
  }
  return `${out}${line}\n`;
}
