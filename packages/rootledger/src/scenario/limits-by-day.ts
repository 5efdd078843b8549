import { dateOf, dayNumber } from "../numeric/day-number.js";
import { pullLimitByDemand } from "../tree/pull-limit-by-demand.js";
import { headFromTension, mmPerCm } from "../units.js";
import type { TreeLimits } from "../water/stress.js";
import type { LimitPeriod, Limits, Scenario } from "./scenario.js";

/** The tree's limits as they change from day to day. The stress process reads `inForce`; `bringIntoForce` writes it. */
export interface LimitsByDay {
  readonly inForce: { -readonly [K in keyof TreeLimits]: TreeLimits[K] };
  /** Limits of each day of the season; one entry where they never change. */
  readonly days: readonly TreeLimits[];
}

/** A tree's limits in the model's units. @example treeLimits(scenario.block.tree.limits).airLimit */
export function treeLimits(limits: Limits): TreeLimits {
  return {
    pullLimitHeadCm: headFromTension(limits.pullLimitKPa),
    zeroUptakeHeadCm: headFromTension(limits.zeroUptakeKPa),
    airLimit: limits.airLimitFraction,
    airZero: limits.airZeroFraction,
    airReturnHeadCm: headFromTension(limits.airReturnKPa),
  };
}

/**
 * Limits of every day: those of the tree, a period's where one holds, and the pull limit moved towards the one for low demand
 * on days of little transpiration (Feddes et al. 1978).
 *
 * @throws RangeError if the limits of a day contradict one another.
 * @param transpirationCm3 demand of each day, cm3 per tree
 * @example limitsByDay(scenario, demand.transpirationCm3, prepared.groundCm2).days.length
 */
export function limitsByDay(scenario: Scenario, transpirationCm3: Float64Array, groundCm2: number): LimitsByDay {
  const { limits } = scenario.block.tree;
  const first = dayNumber(scenario.season.startDate);
  const changing = limits.periods !== undefined || limits.pullLimitLowDemandKPa !== undefined;
  const days = Array.from({ length: changing ? scenario.season.days : 1 }, (_, day) => {
    const period = limits.periods?.find((p) => isWithin(p, dateOf(first + day).slice(5)));
    const today = treeLimits({ ...limits, ...period?.limits });
    requireOrder(today, period?.name);
    if (limits.pullLimitLowDemandKPa === undefined) return today;
    const lowDemand = headFromTension(limits.pullLimitLowDemandKPa);
    if (lowDemand > today.pullLimitHeadCm || lowDemand <= today.zeroUptakeHeadCm) {
      const { pullLimitLowDemandKPa: given } = limits;
      throw new RangeError(
        `limitsByDay requires pullLimitLowDemandKPa from the pull limit to below zeroUptakeKPa: got ${given}`,
      );
    }
    const demandMm = (transpirationCm3[day] / groundCm2) * mmPerCm;
    const highDemand = today.pullLimitHeadCm;
    return { ...today, pullLimitHeadCm: pullLimitByDemand(demandMm, { highDemand, lowDemand }) };
  });
  return { inForce: { ...days[0] }, days };
}

/** Draws and periods can each be right and contradict one another. */
function requireOrder(
  { pullLimitHeadCm, zeroUptakeHeadCm, airReturnHeadCm, airLimit, airZero }: TreeLimits,
  period = "the year",
): void {
  const drier = zeroUptakeHeadCm < pullLimitHeadCm && pullLimitHeadCm < airReturnHeadCm;
  if (drier && airZero < airLimit) return;
  const heads = `${airReturnHeadCm}, ${pullLimitHeadCm}, ${zeroUptakeHeadCm} cm, air ${airZero}, ${airLimit}`;
  throw new RangeError(
    `limitsByDay requires air-return, pull limit and zero uptake ever drier, airZero below airLimit: got ${heads} in ${period}`,
  );
}

/** Whether a day of the year lies in a period, which may run over New Year. @example isWithin({ from: "12-15", to: "01-15" }, "01-01") // true */
export const isWithin = ({ from, to }: Pick<LimitPeriod, "from" | "to">, monthDay: string): boolean =>
  from <= to ? monthDay >= from && monthDay <= to : monthDay >= from || monthDay <= to;

/** Puts the limits of a day of the season into force. @example bringIntoForce(limits, 12) */
export function bringIntoForce({ inForce, days }: LimitsByDay, day: number): void {
  if (days.length === 1) return;
  const today = days[day];
  inForce.pullLimitHeadCm = today.pullLimitHeadCm;
  inForce.zeroUptakeHeadCm = today.zeroUptakeHeadCm;
  inForce.airLimit = today.airLimit;
  inForce.airZero = today.airZero;
  inForce.airReturnHeadCm = today.airReturnHeadCm;
}
