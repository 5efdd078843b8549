import type { Limits } from "../scenario/scenario.js";
import type { UnknownId } from "./prior.js";

/**
 * Limits as a member sees them. What periods of the year and days of low demand say moves by the same factor as the tree's own
 * limit, so that a season keeps its shape.
 *
 * @param at the drawn value of an unknown, undefined where it is not drawn
 * @example editLimits(limits, () => undefined).pullLimitKPa
 */
export function editLimits(limits: Limits, at: (id: UnknownId) => number | undefined): Limits {
  const pull = at("pull-limit") ?? limits.pullLimitKPa;
  const dry = at("dry-limb") ?? limits.zeroUptakeKPa;
  const air = at("air-limit") ?? limits.airLimitFraction;
  const back = at("air-return") ?? limits.airReturnKPa;
  const { pullLimitLowDemandKPa: lowDemand, periods } = limits;
  const factors = {
    pullLimitKPa: pull / limits.pullLimitKPa,
    zeroUptakeKPa: dry / limits.zeroUptakeKPa,
    airLimitFraction: air / limits.airLimitFraction,
    airReturnKPa: back / limits.airReturnKPa,
  };
  return {
    ...limits,
    ...{ pullLimitKPa: pull, zeroUptakeKPa: dry, airLimitFraction: air, airReturnKPa: back },
    ...(lowDemand === undefined ? {} : { pullLimitLowDemandKPa: lowDemand * factors.pullLimitKPa }),
    ...(periods === undefined
      ? {}
      : {
          periods: periods.map((period) => {
            const own = { ...period.limits };
            for (const key of Object.keys(factors) as (keyof typeof factors)[]) {
              const said = own[key];
              if (said !== undefined) own[key] = said * factors[key];
            }
            return { ...period, limits: own };
          }),
        }),
  };
}
