/** What parts the cells of a line; " " stands for runs of blanks. */
export type Delimiter = ";" | "\t" | "," | "|" | " ";

const candidates: readonly Exclude<Delimiter, " ">[] = ["\t", ";", "|", ","];

export const delimiterNames: Readonly<Record<Delimiter, string>> = {
  ";": "semicolon",
  "\t": "tab",
  ",": "comma",
  "|": "pipe",
  " ": "space",
};

/** Lines spread over the text, without the blank ones. */
export function sampleLines(text: string, most: number): string[] {
  const piece = 40_000;
  const starts = text.length <= 3 * piece ? [0] : [0, Math.floor(text.length / 2), text.length - piece];
  const lines: string[] = [];
  for (const start of starts) {
    const part = text.length <= 3 * piece ? text : text.slice(start, start + piece);
    const whole = part.split(/\r\n|\n|\r/);
    if (start > 0) whole.shift();
    if (start + part.length < text.length) whole.pop();
    const used = whole.filter((line) => line.trim() !== "");
    const step = Math.max(1, Math.ceil(used.length / (most / starts.length)));
    for (let i = 0; i < used.length; i += step) lines.push(used[i].slice(0, 4000));
  }
  return lines;
}

/**
 * The sign that parts the cells: the one that stands equally often in the most lines. Commas that stand only between digits are
 * decimal signs if blanks part the lines as evenly.
 */
export function findDelimiter(lines: readonly string[]): Delimiter | undefined {
  let best: { readonly delimiter: Delimiter; readonly share: number } | undefined;
  for (const delimiter of candidates) {
    const share = evenShare(lines.map((line) => countOutsideQuotes(line, delimiter)));
    if (share >= 0.5 && (best === undefined || share > best.share + 0.2)) best = { delimiter, share };
  }
  const blanks = evenShare(lines.map((line) => line.trim().split(/\s+/).length - 1));
  if (best === undefined) return blanks >= 0.5 ? " " : undefined;
  if (best.delimiter === "," && blanks >= best.share && commasAreDecimal(lines)) return " ";
  return best.delimiter;
}

/** Share of the lines with the most frequent count above 0. */
function evenShare(counts: readonly number[]): number {
  const tally = new Map<number, number>();
  for (const count of counts) if (count > 0) tally.set(count, (tally.get(count) ?? 0) + 1);
  return counts.length === 0 ? 0 : Math.max(0, ...tally.values()) / counts.length;
}

function countOutsideQuotes(line: string, delimiter: string): number {
  const code = delimiter.charCodeAt(0);
  let count = 0;
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const at = line.charCodeAt(i);
    if (at === 0x22) quoted = !quoted;
    else if (at === code && !quoted) count++;
  }
  return count;
}

function commasAreDecimal(lines: readonly string[]): boolean {
  const data = lines.filter((line) => line.includes(","));
  return (
    lines.some((line) => !line.includes(",")) &&
    data.every((line) =>
      line
        .trim()
        .split(/\s+/)
        .every((token) => !token.includes(",") || /^[+-]?\d*,\d+$/.test(token)),
    )
  );
}
