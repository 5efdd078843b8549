/**
 * The word most like the given one, or undefined if none is close: at most a third of its letters (and at least two) may
 * have to be changed, added, dropped or swapped with their neighbour.
 *
 * @example nearestWord("emiterSpacingM", ["emitterSpacingM", "offsetsM"]) // "emitterSpacingM"
 */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length > 80) return undefined;
  let best: string | undefined;
  let least = Math.max(2, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

/** Edits between two words, neighbours swapped counting as one (Damerau 1964; optimal string alignment). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = last[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, last[j] + 1, row[j - 1] + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, beforeLast[j - 2] + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length];
}
