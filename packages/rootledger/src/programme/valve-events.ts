import { type Programme, pulseHours } from "./programme.js";

/**
 * Openings and closings of the valve over a season, hours since its first midnight: on, off, on, off ... A run that begins
 * on a day of the season is carried past the last midnight; the simulation ends where it ends.
 *
 * @throws RangeError if two pulses overlap.
 * @example valveEvents({ name: "daily", runs: [{ startH: 6, everyDays: 1, firstDay: 0, pulses: 1, gapMinutes: 0, amount: { minutes: 60 } }] }, 1, 32) // [6, 7]
 */
export function valveEvents(programme: Programme, days: number, treeFlowLPerH: number): Float64Array {
  const openings: [number, number][] = [];
  for (const run of programme.runs) {
    const lengthH = pulseHours(run, treeFlowLPerH);
    const stepH = lengthH + run.gapMinutes / 60;
    for (let day = run.firstDay; day < days; day += run.everyDays) {
      for (let pulse = 0; pulse < run.pulses; pulse++) {
        const onH = day * 24 + run.startH + pulse * stepH;
        openings.push([onH, onH + lengthH]);
      }
    }
  }
  openings.sort((a, b) => a[0] - b[0]);
  const events = new Float64Array(openings.length * 2);
  openings.forEach(([onH, offH], i) => {
    if (i > 0 && onH < openings[i - 1][1] - 1e-9) {
      throw new RangeError(
        `valveEvents requires runs that do not overlap: one opens at ${onH} h while another runs until ${openings[i - 1][1]} h`,
      );
    }
    events[2 * i] = onH;
    events[2 * i + 1] = offH;
  });
  return events;
}

/**
 * Hours within a stretch of time in which the valve is open.
 *
 * @param valveH on, off, on, off ... h, rising
 * @example openHours(Float64Array.of(6, 7, 13, 14), 0, 13.5) // 1.5
 */
export function openHours(valveH: Float64Array, fromH: number, toH: number): number {
  let low = 0;
  let high = valveH.length / 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (valveH[2 * middle + 1] <= fromH) low = middle + 1;
    else high = middle;
  }
  let openH = 0;
  for (let run = low; 2 * run < valveH.length && valveH[2 * run] < toH; run++) {
    const onH = valveH[2 * run] > fromH ? valveH[2 * run] : fromH;
    const offH = valveH[2 * run + 1] < toH ? valveH[2 * run + 1] : toH;
    openH += offH - onH;
  }
  return openH;
}
