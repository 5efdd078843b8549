import { dateOf, dayNumber, daysInMonth } from "../numeric/day-number.js";
import { minutesPerH } from "../units.js";
import { injectedStretches } from "./injected-stretches.js";
import { type Programme, pulseHours } from "./programme.js";

/** Nitrogen that the programme brings, all of it counted as nitrate from the moment it is given. */
export interface NitrogenDoses {
  readonly throughWater?: Injection;
  readonly byHand?: readonly HandDose[];
}

/**
 * Product injected once in every run. Minutes count the time the valve is open in that run, its pauses left out, and are those at
 * which the injected water reaches the block's emitters.
 */
export interface Injection {
  readonly afterMinutes: number;
  readonly injectMinutes: number;
  readonly amount: InjectionAmount;
}

/** Nitrogen in the emitters' water while it is injected, or for the mean tree in each run, or for a hectare in each month from January. */
export type InjectionAmount =
  | { readonly mgPerL: number }
  | { readonly gPerTreePerRun: number }
  | { readonly kgPerHaByMonth: readonly number[] };

/** Nitrogen laid on the ground at the first midnight of a date. */
export interface HandDose {
  readonly date: string;
  readonly gPerTree: number;
  /** Ground that it is spread over evenly: below the canopy, where the tree has roots, or all the ground of the tree. */
  readonly ground: "under-canopy" | "rooted-ground" | "all-ground";
}

/** Stretches in which injected water leaves the emitters, h: on, off, on, off ... and its nitrogen in each. */
export interface InjectionSchedule {
  readonly eventsH: Float64Array;
  readonly mgPerL: Float64Array;
  /** Month amounts that found no run in their month of the season, kg/ha by month. */
  readonly notGivenKgPerHa: readonly { readonly month: number; readonly kgPerHa: number }[];
}

/** Where in a run something is injected. */
export interface InjectionPlace {
  readonly startDate: string;
  readonly days: number;
  readonly treeFlowLPerH: number;
  readonly groundM2: number;
}

interface Piece {
  readonly onH: number;
  readonly offH: number;
  /** Year and month, "2025-12", of the day on which the run begins. */
  readonly month: string;
  readonly runHours: number;
}

/**
 * When and how strongly nitrogen leaves the emitters over a season. A month that lies in the season in part brings that part of
 * its kg/ha, shared by its runs in proportion to their minutes of injection.
 *
 * @throws RangeError if the flow or the ground is not above 0, or there are not twelve months.
 * @example injectionSchedule(programme.runs, { afterMinutes: 25, injectMinutes: 45, amount: { mgPerL: 50 } }, place).mgPerL[0] // 50
 */
export function injectionSchedule(
  runs: Programme["runs"],
  injection: Injection,
  place: InjectionPlace,
): InjectionSchedule {
  const { treeFlowLPerH, groundM2 } = place;
  if (!(treeFlowLPerH > 0 && groundM2 > 0)) {
    throw new RangeError(`injectionSchedule requires flow and ground above 0: got ${treeFlowLPerH}, ${groundM2}`);
  }
  const pieces = piecesOf(runs, injection, place);
  const eventsH = Float64Array.from(pieces.flatMap(({ onH, offH }) => [onH, offH]));
  const { amount } = injection;
  if ("mgPerL" in amount) {
    return { eventsH, mgPerL: new Float64Array(pieces.length).fill(amount.mgPerL), notGivenKgPerHa: [] };
  }
  if ("gPerTreePerRun" in amount) {
    const perRun = (1000 * amount.gPerTreePerRun) / treeFlowLPerH;
    return { eventsH, mgPerL: Float64Array.from(pieces, ({ runHours }) => perRun / runHours), notGivenKgPerHa: [] };
  }
  const byMonth = amount.kgPerHaByMonth;
  if (byMonth.length !== 12) throw new RangeError(`injectionSchedule requires twelve months: got ${byMonth.length}`);
  const shares = monthShares(place);
  const hours = new Map<string, number>();
  for (const { month, onH, offH } of pieces) hours.set(month, (hours.get(month) ?? 0) + offH - onH);
  const kgOf = (month: string): number => byMonth[Number(month.slice(-2)) - 1] * (shares.get(month) ?? 0);
  return {
    eventsH,
    // kg/ha is 100 mg/m2.
    mgPerL: Float64Array.from(
      pieces,
      ({ month }) => (kgOf(month) * 100 * groundM2) / (treeFlowLPerH * (hours.get(month) ?? Number.NaN)),
    ),
    notGivenKgPerHa: [...shares.keys()]
      .filter((month) => kgOf(month) > 0 && !hours.has(month))
      .map((month) => ({ month: Number(month.slice(-2)), kgPerHa: kgOf(month) })),
  };
}

function piecesOf(runs: Programme["runs"], injection: Injection, place: InjectionPlace): Piece[] {
  const afterH = injection.afterMinutes / minutesPerH;
  const injectH = injection.injectMinutes / minutesPerH;
  const first = dayNumber(place.startDate);
  const pieces: Piece[] = [];
  for (const run of runs) {
    const lengthH = pulseHours(run, place.treeFlowLPerH);
    const stepH = lengthH + run.gapMinutes / minutesPerH;
    for (let day = run.firstDay; day < place.days; day += run.everyDays) {
      const month = dateOf(first + day).slice(0, 7);
      const openingsH: number[] = [];
      for (let pulse = 0; pulse < run.pulses; pulse++) {
        const onH = day * 24 + run.startH + pulse * stepH;
        openingsH.push(onH, onH + lengthH);
      }
      const { eventsH, hours: runHours } = injectedStretches(openingsH, afterH, injectH);
      for (let e = 0; e < eventsH.length; e += 2)
        pieces.push({ onH: eventsH[e], offH: eventsH[e + 1], month, runHours });
    }
  }
  return pieces.sort((a, b) => a.onH - b.onH);
}

/** Share of each month's days that lie in the season. */
function monthShares({ startDate, days }: InjectionPlace): Map<string, number> {
  const shares = new Map<string, number>();
  const first = dayNumber(startDate);
  for (let day = 0; day < days; day++) {
    const month = dateOf(first + day).slice(0, 7);
    const length = daysInMonth(Number(month.slice(0, 4)), Number(month.slice(5)));
    shares.set(month, (shares.get(month) ?? 0) + 1 / length);
  }
  return shares;
}
