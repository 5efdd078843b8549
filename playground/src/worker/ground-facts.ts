import type { Ground } from "./protocol.js";

/** What the pictures need to know of the tree beside the result. */
export function groundFacts(tree: {
  readonly limits: { readonly airLimitFraction: number };
  readonly roots: { readonly depthCm: number };
}): Ground {
  return { airLimitFraction: tree.limits.airLimitFraction, rootDepthCm: tree.roots.depthCm };
}
