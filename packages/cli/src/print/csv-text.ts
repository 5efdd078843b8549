/** Cells quoted where they hold a comma, a quote or a line end (RFC 4180). */
export const csvText = (lines: readonly (readonly string[])[]): string =>
  lines
    .map(
      (line) => `${line.map((cell) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(",")}\n`,
    )
    .join("");
