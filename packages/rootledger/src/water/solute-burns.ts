/** Drainage through soil at field capacity, which carries down what lay on its surface. */
export interface Leaching {
  readonly drainageCm: number;
  readonly thetaFieldCapacity: number;
  readonly depthCm: number;
}

/**
 * Fraction leached below a depth of what was spread on the surface, (P / (P + theta))^h with P and h in cm (theta is the water of a
 * 1 cm layer). Source: Burns (1975), J. Agricultural Science 85:443.
 *
 * @throws RangeError if an argument is out of range.
 * @example burnsFraction({ drainageCm: 10, thetaFieldCapacity: 0.25, depthCm: 30 }) // 0.47674
 */
export function burnsFraction(leaching: Leaching): number {
  return cellwiseFraction({ ...checked("burnsFraction", leaching), cellCm: 1 });
}

/**
 * The same in its continuous form, exp(-h theta / P). Source: Scotter, White & Dyson (1993), J. Soil Science 44:25, who show that it
 * describes flow tubes that do not mix, so that its spread grows with depth.
 *
 * @param mixedToCm depth to which the dose was worked in; counts from its middle (h - w/2). Default 0: on the surface.
 * @throws RangeError if an argument is out of range.
 * @example scotterFraction({ drainageCm: 10, thetaFieldCapacity: 0.25, depthCm: 30 }) // 0.47237
 */
export function scotterFraction(leaching: Leaching, mixedToCm = 0): number {
  const { drainageCm, thetaFieldCapacity, depthCm } = checked("scotterFraction", leaching);
  if (!(mixedToCm >= 0 && mixedToCm <= depthCm)) {
    throw new RangeError(`scotterFraction requires mixedToCm from 0 to the depth: got ${mixedToCm}`);
  }
  return drainageCm === 0 ? 0 : Math.exp((-(depthCm - mixedToCm / 2) * thetaFieldCapacity) / drainageCm);
}

/**
 * The same reckoned cell by cell, all the drainage passing one cell before the next: (P / (P + theta L))^(h/L). The answer depends on
 * the cell's thickness L; `scotterFraction` is its limit for thin cells.
 *
 * @throws RangeError if an argument is out of range.
 * @example cellwiseFraction({ drainageCm: 10, thetaFieldCapacity: 0.25, depthCm: 30, cellCm: 10 }) // 0.512
 */
export function cellwiseFraction(leaching: Leaching & { readonly cellCm: number }): number {
  const { drainageCm, thetaFieldCapacity, depthCm } = checked("cellwiseFraction", leaching);
  const { cellCm } = leaching;
  if (!(cellCm > 0)) throw new RangeError(`cellwiseFraction requires cellCm above 0: got ${cellCm}`);
  if (drainageCm === 0) return 0;
  return Math.exp((depthCm / cellCm) * Math.log(drainageCm / (drainageCm + thetaFieldCapacity * cellCm)));
}

/**
 * Depth below which half has been leached, cm, by Burns' equation.
 *
 * @throws RangeError if an argument is out of range.
 * @example burnsHalfDepthCm({ drainageCm: 10, thetaFieldCapacity: 0.25 }) // 28.1
 */
export function burnsHalfDepthCm(leaching: Omit<Leaching, "depthCm">): number {
  const { drainageCm, thetaFieldCapacity } = checked("burnsHalfDepthCm", { ...leaching, depthCm: 1 });
  return Math.log(2) / Math.log((drainageCm + thetaFieldCapacity) / drainageCm);
}

function checked(caller: string, leaching: Leaching): Leaching {
  const { drainageCm, thetaFieldCapacity, depthCm } = leaching;
  if (!(drainageCm >= 0)) throw new RangeError(`${caller} requires drainageCm from 0: got ${drainageCm}`);
  if (!(depthCm > 0)) throw new RangeError(`${caller} requires depthCm above 0: got ${depthCm}`);
  if (!(thetaFieldCapacity > 0 && thetaFieldCapacity < 1)) {
    throw new RangeError(`${caller} requires thetaFieldCapacity between 0 and 1: got ${thetaFieldCapacity}`);
  }
  return leaching;
}
