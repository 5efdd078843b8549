import { rootDepthShare } from "./root-depth-share.js";

/** Roots that live in the leaf litter on top of the soil. */
export interface LitterRoots {
  /** Depth of the litter at the top of the profile, cm; an edge of a layer. */
  readonly thicknessCm: number;
  /** Share of all roots that live in it, (0, 1). Feeders are thickest at the surface under mulch (Coit 1940, avocado); no share is published. */
  readonly share: number;
}

/**
 * Share of the roots in each layer where some live in the litter: those evenly over its depth, the others in the soil below it by the
 * vertical law of `rootDepthShare`.
 *
 * @param depthCm rooted depth from the top of the litter
 * @throws RangeError if the share is not in (0, 1) or the litter is no layer above the rooted depth.
 * @example rootDepthShareWithLitter([0, 5, 25, 65], 65, 0.85, { thicknessCm: 5, share: 0.2 })[0] // 0.2
 */
export function rootDepthShareWithLitter(
  layerEdgesCm: ArrayLike<number>,
  depthCm: number,
  topShare: number,
  litter: LitterRoots,
): Float64Array {
  const { thicknessCm, share } = litter;
  const edges = Array.from(layerEdgesCm);
  const first = edges.indexOf(thicknessCm);
  if (!(share > 0 && share < 1)) {
    throw new RangeError(`rootDepthShareWithLitter requires a share in (0, 1): got ${share}`);
  }
  if (!(first > 0 && thicknessCm < depthCm)) {
    throw new RangeError(
      `rootDepthShareWithLitter requires litter as a layer above the rooted depth, ${depthCm} cm: got ${thicknessCm} cm`,
    );
  }
  const below = rootDepthShare(
    edges.slice(first).map((edge) => edge - thicknessCm),
    depthCm - thicknessCm,
    topShare,
  );
  return Float64Array.from({ length: edges.length - 1 }, (_, i) =>
    i < first ? (share * (edges[i + 1] - edges[i])) / thicknessCm : (1 - share) * below[i - first],
  );
}
