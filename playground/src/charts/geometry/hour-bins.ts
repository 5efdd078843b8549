/** A line through a long row of numbers that keeps every extreme: at most four points per bin, `[row, value]`. */
export function keptExtremes(values: Float64Array, from: number, to: number, bins: number): [number, number][] {
  const points: [number, number][] = [];
  const perBin = Math.max(1, (to - from) / bins);
  for (let start = from; start < to; start += perBin) {
    const first = Math.floor(start);
    const last = Math.min(to, Math.floor(start + perBin)) - 1;
    if (last < first) continue;
    let low = first;
    let high = first;
    for (let row = first; row <= last; row++) {
      if (values[row]! < values[low]!) low = row;
      if (values[row]! > values[high]!) high = row;
    }
    for (const row of [...new Set([first, low, high, last])].sort((a, b) => a - b)) points.push([row, values[row]!]);
  }
  return points;
}

/** Means of equal bins, with the row each begins at. */
export function binMeans(
  values: Float64Array,
  from: number,
  to: number,
  perBin: number,
): { row: number; mean: number }[] {
  const bins: { row: number; mean: number }[] = [];
  for (let row = from; row < to; row += perBin) {
    let sum = 0;
    const end = Math.min(to, row + perBin);
    for (let k = row; k < end; k++) sum += values[k]!;
    bins.push({ row, mean: sum / (end - row) });
  }
  return bins;
}

/** Sum of each day that begins in the range. */
export function daySums(values: Float64Array, from: number, to: number): { day: number; sum: number }[] {
  const sums: { day: number; sum: number }[] = [];
  for (let row = from; row < to; row += 24) {
    let sum = 0;
    for (let k = row; k < Math.min(to, row + 24); k++) sum += values[k]!;
    sums.push({ day: row / 24, sum });
  }
  return sums;
}
