/**
 * Sum of excess water, cm d: over the days, how far the water table stood above a depth. Source: Sieben (1964), with 30 cm. Only of
 * use where there is a water table.
 *
 * @throws RangeError if a depth is not a number.
 * @example sumOfExcessWaterCmDay([45, 28, 20, 12, 5, 9, 18, 26, 33, 31]) // 92
 */
export function sumOfExcessWaterCmDay(waterTableDepthCm: ArrayLike<number>, aboveCm = 30): number {
  let sum = 0;
  for (let day = 0; day < waterTableDepthCm.length; day++) {
    const depth = waterTableDepthCm[day];
    if (Number.isNaN(depth)) throw new RangeError(`sumOfExcessWaterCmDay requires depths in cm: got NaN on day ${day}`);
    if (depth < aboveCm) sum += aboveCm - depth;
  }
  return sum;
}
