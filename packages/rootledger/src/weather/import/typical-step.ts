/**
 * The most frequent step between neighbours, equal times aside; NaN for fewer than two different times, or where it is less frequent than
 * `leastShare` of the steps.
 */
export function typicalStep(minutes: ArrayLike<number>, leastShare = 0): number {
  const tally = new Map<number, number>();
  let best = Number.NaN;
  let most = 0;
  let steps = 0;
  for (let i = 1; i < minutes.length; i++) {
    const step = Math.round(Math.abs(minutes[i] - minutes[i - 1]) * 1000) / 1000;
    if (!(step > 0)) continue;
    steps++;
    const count = (tally.get(step) ?? 0) + 1;
    tally.set(step, count);
    if (count > most || (count === most && step < best)) {
      most = count;
      best = step;
    }
  }
  return most >= leastShare * steps ? best : Number.NaN;
}
