import { dateOf, dayNumber, daysInMonth } from "../numeric/day-number.js";
import { minutesPerH } from "../units.js";
import { injectedStretches } from "./injected-stretches.js";
import type { Injection, InjectionPlace } from "./injection.js";

/** Nitrogen through the water of a valve that is decided day by day. */
export interface DecidedInjection {
  /** Tells it the openings of a day's decision, run by run: on, off ... h. */
  readonly open: (day: number, runs: readonly (readonly number[])[]) => void;
  /** Stretches so far in which injected water leaves the emitters: on, off ... h, and their nitrogen. */
  readonly eventsH: () => readonly number[];
  /** Concentration of the water at an hour. */
  readonly mgPerL: () => readonly number[];
  /** What was not given so far. */
  readonly notGiven: () => NotGiven;
  /** Back to the first midnight. */
  readonly restart: () => void;
  /** All that a restart needs. */
  readonly snapshot: () => readonly number[];
  /** Goes back to a snapshot. */
  readonly restore: (from: readonly number[]) => void;
}

/** An injection that could not be given. */
export interface NotGiven {
  /** Of month amounts: owed and carried by no run. */
  readonly kgPerHa: number;
  /** Runs that ended before the injection began, and what they should have brought the mean tree. */
  readonly shortRuns: number;
  readonly gPerTree: number;
  /** Least clean water after an injection, minutes; infinite without one. */
  readonly leastFlushMinutes: number;
}

/** Numbers of a snapshot before its stretches. */
const heading = 5;

/**
 * Doses of runs that are not known beforehand. Grams a run and mg/L go with each run as it is opened; kg/ha of a month accrue evenly
 * by day, and the runs of a day bring what is owed by then. What no run could carry is counted, not lost from sight.
 *
 * @throws RangeError if the flow or the ground is not above 0, or there are not twelve months.
 * @example decidedInjection({ afterMinutes: 25, injectMinutes: 45, amount: { mgPerL: 50 } }, place).eventsH().length // 0
 */
export function decidedInjection(injection: Injection, place: InjectionPlace): DecidedInjection {
  const { treeFlowLPerH, groundM2 } = place;
  const { amount } = injection;
  if (!(treeFlowLPerH > 0 && groundM2 > 0)) {
    throw new RangeError(`decidedInjection requires flow and ground above 0: got ${treeFlowLPerH}, ${groundM2}`);
  }
  if ("kgPerHaByMonth" in amount && amount.kgPerHaByMonth.length !== 12) {
    throw new RangeError(`decidedInjection requires twelve months: got ${amount.kgPerHaByMonth.length}`);
  }
  const afterH = injection.afterMinutes / minutesPerH;
  const injectH = injection.injectMinutes / minutesPerH;
  const first = dayNumber(place.startDate);
  const eventsH: number[] = [];
  const mgPerL: number[] = [];
  let owedKgPerHa = 0;
  let accruedDays = 0;
  let shortRuns = 0;
  let lostG = 0;
  let leastFlushH = Number.POSITIVE_INFINITY;

  function accrue(byMonth: readonly number[], untilDay: number): void {
    for (; accruedDays <= untilDay && accruedDays < place.days; accruedDays++) {
      const [year, month] = dateOf(first + accruedDays)
        .split("-")
        .map(Number);
      owedKgPerHa += byMonth[month - 1] / daysInMonth(year, month);
    }
  }

  /** Content of the day's injected water, mg/L. */
  function content(hoursOfDay: number, hoursOfRun: number): number {
    if ("mgPerL" in amount) return amount.mgPerL;
    if ("gPerTreePerRun" in amount) return (1000 * amount.gPerTreePerRun) / (treeFlowLPerH * hoursOfRun);
    // kg/ha is 100 mg/m2.
    return (owedKgPerHa * 100 * groundM2) / (treeFlowLPerH * hoursOfDay);
  }

  return {
    open(day, runs) {
      if ("kgPerHaByMonth" in amount) accrue(amount.kgPerHaByMonth, day);
      const all = runs.map((openingsH) => injectedStretches(openingsH, afterH, injectH));
      const hoursOfDay = all.reduce((sum, { hours }) => sum + hours, 0);
      all.forEach((run, i) => {
        if (run.hours === 0) {
          shortRuns++;
          if ("gPerTreePerRun" in amount) lostG += amount.gPerTreePerRun;
          return;
        }
        const mg = content(hoursOfDay, run.hours);
        eventsH.push(...run.eventsH);
        for (let e = 0; e < run.eventsH.length; e += 2) mgPerL.push(mg);
        let openH = 0;
        for (let e = 0; e < runs[i].length; e += 2) openH += runs[i][e + 1] - runs[i][e];
        const flushH = openH - afterH - run.hours;
        if (flushH < leastFlushH) leastFlushH = flushH;
      });
      if (hoursOfDay > 0) owedKgPerHa = 0;
    },
    eventsH: () => eventsH,
    mgPerL: () => mgPerL,
    notGiven: () => ({
      ...{ kgPerHa: owedKgPerHa, shortRuns, gPerTree: lostG, leastFlushMinutes: leastFlushH * minutesPerH },
    }),
    restart() {
      eventsH.length = 0;
      mgPerL.length = 0;
      owedKgPerHa = accruedDays = shortRuns = lostG = 0;
      leastFlushH = Number.POSITIVE_INFINITY;
    },
    snapshot: () => [owedKgPerHa, accruedDays, shortRuns, lostG, Math.min(leastFlushH, 1e9), ...eventsH, ...mgPerL],
    restore(from) {
      const pieces = from.length < heading ? 0 : (from.length - heading) / 3;
      [owedKgPerHa = 0, accruedDays = 0, shortRuns = 0, lostG = 0, leastFlushH = Number.POSITIVE_INFINITY] = from;
      if (leastFlushH >= 1e9) leastFlushH = Number.POSITIVE_INFINITY;
      eventsH.splice(0, eventsH.length, ...from.slice(heading, heading + 2 * pieces));
      mgPerL.splice(0, mgPerL.length, ...from.slice(heading + 2 * pieces));
    },
  };
}
