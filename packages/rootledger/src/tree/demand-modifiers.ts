/**
 * Factor on transpiration after leaves were lost: (1 - exp(-0.7 LAI s)) / (1 - exp(-0.7 LAI)), s the share of leaves left, as
 * FAO-56 (Allen et al. 1998) eq. 97 makes Kcb depend on leaf area. A dense canopy loses less water use than leaves.
 *
 * @throws RangeError if the share is not 0 to 1 or LAI not above 0.
 * @example leafLossFactor(0.5, 3) // 0.741
 */
export function leafLossFactor(leavesLeftFraction: number, leafAreaIndex: number): number {
  if (!(leavesLeftFraction >= 0 && leavesLeftFraction <= 1) || !(leafAreaIndex > 0)) {
    throw new RangeError(
      `leafLossFactor requires a share 0 to 1 and LAI above 0: got ${leavesLeftFraction} and ${leafAreaIndex}`,
    );
  }
  return (1 - Math.exp(-0.7 * leafAreaIndex * leavesLeftFraction)) / (1 - Math.exp(-0.7 * leafAreaIndex));
}

/** How demand is held back on hot days. */
export interface HeatLimit {
  /** Above it stomata close. */
  readonly limitC: number;
  /** Share of the full demand that is left at `closedC` and above. */
  readonly closedFraction: number;
  readonly closedC: number;
}

/**
 * Heat at which avocado stomata close: above about 31 C (88 F). Source: a California growers' commission note on heat (2020) and UC
 * Cooperative Extension (2020). How far they close, half at 40 C, is our choice; no published curve was found.
 */
export const avocadoHeatLimit: HeatLimit = { limitC: 31, closedFraction: 0.5, closedC: 40 };

/**
 * Factor on the transpiration of an hour by its air temperature: 1 up to the limit, falling linearly to `closedFraction`. Off
 * unless asked for: ET0 is the demand of grass, which does not close.
 *
 * @example heatFactor(35.5, avocadoHeatLimit) // 0.75
 */
export function heatFactor(airC: number, limit: HeatLimit): number {
  if (airC <= limit.limitC) return 1;
  if (airC >= limit.closedC) return limit.closedFraction;
  return 1 - ((1 - limit.closedFraction) * (airC - limit.limitC)) / (limit.closedC - limit.limitC);
}

/**
 * Factor on transpiration in flower: 1 + increase. The flowers of avocado add up to 90 % to the evaporating surface (Agriculture
 * Victoria, from an overview of the trade), but what that adds to water use was not published, so there is no default but 0.
 *
 * @throws RangeError if the increase is negative or above 0.9, the published gain of surface.
 * @example floweringFactor(0.1) // 1.1
 */
export function floweringFactor(increaseFraction: number): number {
  if (!(increaseFraction >= 0 && increaseFraction <= 0.9)) {
    throw new RangeError(`floweringFactor requires an increase of 0 to 0.9: got ${increaseFraction}`);
  }
  return 1 + increaseFraction;
}
