/** What a pulse must be long enough for. Minutes. */
export interface PulseNeeds {
  /** Time in which empty lines fill. */
  readonly fillMinutes: number;
  /** Time in which full lines run empty; left out: they stay full. */
  readonly drainMinutes?: number;
  readonly gapMinutes: number;
  /** Most of a pulse that may go into filling; what fills drains to the low end. */
  readonly mostFillFraction: number;
  /** Travel, injection and flush of a pulse that carries product. */
  readonly injectionMinutes?: number;
  /** Day's watering, the hours it must fit in, and the pause after which the roots have air again. */
  readonly dayMinutes: number;
  readonly availableMinutes: number;
  readonly airBackMinutes: number;
}

/** How long an opening must be to be of use, and why. */
export interface ShortestPulse {
  readonly minutes: number;
  readonly by: "fill" | "injection" | "air";
  readonly fillMinutes: number;
  readonly injectionMinutes: number;
  readonly airMinutes: number;
}

/**
 * Shortest useful pulse, the longest of three: what the gap let drain must be refilled within a stated share of the pulse;
 * an injection must fit; and there must be few enough pulses, n <= (available - day) / air + 1, for pauses in which air comes
 * back. With no room for any pause the day is one run.
 *
 * @throws RangeError if mostFillFraction is not in (0, 1] or the day does not fit the hours available.
 * @example shortestUsefulPulse({ fillMinutes: 3, gapMinutes: 60, drainMinutes: 120, mostFillFraction: 0.1, dayMinutes: 240, availableMinutes: 600, airBackMinutes: 120 }).minutes // 60
 */
export function shortestUsefulPulse(needs: PulseNeeds): ShortestPulse {
  const { fillMinutes, drainMinutes, gapMinutes, mostFillFraction, injectionMinutes = 0 } = needs;
  const { dayMinutes, availableMinutes, airBackMinutes } = needs;
  if (!(mostFillFraction > 0 && mostFillFraction <= 1)) {
    throw new RangeError(`shortestUsefulPulse requires mostFillFraction above 0 and up to 1: got ${mostFillFraction}`);
  }
  if (!(dayMinutes <= availableMinutes)) {
    throw new RangeError(`shortestUsefulPulse requires dayMinutes up to ${availableMinutes}: got ${dayMinutes}`);
  }
  const emptied = drainMinutes === undefined ? 0 : gapMinutes < drainMinutes ? gapMinutes / drainMinutes : 1;
  const fill = (fillMinutes * emptied) / mostFillFraction;
  const most = airBackMinutes > 0 ? Math.floor((availableMinutes - dayMinutes) / airBackMinutes) + 1 : undefined;
  const air = most === undefined ? 0 : dayMinutes / most;
  const minutes = Math.max(fill, injectionMinutes, air);
  const by = minutes === fill ? "fill" : minutes === injectionMinutes ? "injection" : "air";
  return { minutes, by, fillMinutes: fill, injectionMinutes, airMinutes: air };
}
