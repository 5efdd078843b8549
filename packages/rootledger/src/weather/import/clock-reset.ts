const minutesPerYear = 365.25 * 1440;

/**
 * Rows whose time is far from all others, as a logger writes them after it lost its clock: groups of at most 1 % of the rows (or three of
 * them in a short file) that lie more than two years from the rest, if the rest is nine tenths of the file. Own rule. Returns their places.
 */
export function clockResets(minutes: Float64Array): number[] {
  if (!hasLongStep(minutes)) return [];
  const order = Array.from(minutes.keys())
    .filter((i) => !Number.isNaN(minutes[i]))
    .sort((a, b) => minutes[a] - minutes[b]);
  const groups: number[][] = [];
  for (const i of order) {
    const last = groups.at(-1);
    if (last === undefined || minutes[i] - minutes[last[last.length - 1]] > 2 * minutesPerYear) groups.push([i]);
    else last.push(i);
  }
  if (groups.length < 2) return [];
  const largest = groups.reduce((a, b) => (b.length > a.length ? b : a));
  if (largest.length < 0.9 * order.length) return [];
  const few = Math.max(0.01 * order.length, Math.min(3, 0.1 * order.length));
  return groups.filter((group) => group !== largest && group.length <= few).flat();
}

/** Whether two neighbours are years apart; without such a step no group can lie apart. */
function hasLongStep(minutes: Float64Array): boolean {
  let before = Number.NaN;
  for (const now of minutes) {
    if (Number.isNaN(now)) continue;
    if (Math.abs(now - before) > 2 * minutesPerYear) return true;
    before = now;
  }
  return false;
}
