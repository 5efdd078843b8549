/**
 * Share of the roots in each layer. The cumulative share above depth d is Y(d) = 1 - beta^d (Gale & Grigal 1987, Canadian
 * J. Forest Research 17:829), beta set by the share in the top 20 cm, cut at the rooted depth and scaled to 1.
 *
 * @param topShare share above 20 cm of an uncut profile, (0, 1)
 * @throws RangeError if topShare or depthCm is out of range.
 * @example rootDepthShare([0, 20, 60], 60, 0.85)[0] // 0.853
 */
export function rootDepthShare(layerEdgesCm: ArrayLike<number>, depthCm: number, topShare: number): Float64Array {
  if (!(topShare > 0 && topShare < 1))
    throw new RangeError(`rootDepthShare requires topShare in (0, 1): got ${topShare}`);
  if (!(depthCm > 0)) throw new RangeError(`rootDepthShare requires depthCm above 0: got ${depthCm}`);
  const logBeta = Math.log(1 - topShare) / 20;
  const above = (cm: number): number => 1 - Math.exp(logBeta * (cm < depthCm ? cm : depthCm));
  const whole = above(depthCm) - above(layerEdgesCm[0]);
  const share = new Float64Array(layerEdgesCm.length - 1);
  for (let i = 0; i < share.length; i++) share[i] = (above(layerEdgesCm[i + 1]) - above(layerEdgesCm[i])) / whole;
  return share;
}
