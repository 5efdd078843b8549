/** When injected water leaves the emitters in one run. */
export interface InjectedStretches {
  /** On, off, on, off ... h, a pair for each pulse that carries some. */
  readonly eventsH: readonly number[];
  /** Hours of all stretches; 0 where the run ends before the injection begins. */
  readonly hours: number;
}

/**
 * The part of a run's openings in which injected water leaves the emitters: open time counts, pauses do not.
 *
 * @param openingsH of one run: on, off, on, off ... h
 * @example injectedStretches([6, 7, 9, 10], 0.5, 1) // { eventsH: [6.5, 7, 9, 9.5], hours: 1 }
 */
export function injectedStretches(openingsH: ArrayLike<number>, afterH: number, injectH: number): InjectedStretches {
  const toH = afterH + injectH;
  const eventsH: number[] = [];
  let openH = 0;
  let hours = 0;
  for (let e = 0; e + 1 < openingsH.length; e += 2) {
    const onH = openingsH[e];
    const lengthH = openingsH[e + 1] - onH;
    const from = afterH > openH ? afterH - openH : 0;
    const to = toH < openH + lengthH ? toH - openH : lengthH;
    openH += lengthH;
    if (!(to > from)) continue;
    eventsH.push(onH + from, onH + to);
    hours += to - from;
  }
  return { eventsH, hours };
}
