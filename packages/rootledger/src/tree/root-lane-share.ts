import { circleStripShare } from "../numeric/circle-strip.js";

/** How the roots spread sideways; see the scenario's `roots.lateral`. */
export type LateralRoots =
  | { readonly kind: "along-lines"; readonly halfWidthCm: number }
  | { readonly kind: "disc"; readonly radiusCm: number };

/**
 * Share of the ground of each lane of a strip that has roots, over the tree's length of row. `along-lines`: within `halfWidthCm`
 * of any line, the pattern of a mature tree whose roots have followed the wetted strip. `disc`: what a disc round the trunk covers.
 *
 * @param lineAtCm distances from the tree row, as `laneEdgesCm` has them, on one side of it: from 0
 * @throws RangeError if no lane has roots.
 * @example rootedLaneShare([0, 50, 100], [0], 400, { kind: "along-lines", halfWidthCm: 60 }) // [1, 0.2]
 */
export function rootedLaneShare(
  laneEdgesCm: ArrayLike<number>,
  lineAtCm: readonly number[],
  rowLengthCm: number,
  lateral: LateralRoots,
): Float64Array {
  const share = Float64Array.from({ length: laneEdgesCm.length - 1 }, (_, j) => {
    const from = laneEdgesCm[j];
    const to = laneEdgesCm[j + 1];
    return lateral.kind === "disc"
      ? circleStripShare(from, to, lateral.radiusCm, rowLengthCm)
      : lengthNearLines(from, to, lineAtCm, lateral.halfWidthCm) / (to - from);
  });
  if (!share.some((part) => part > 0)) throw new RangeError("rootedLaneShare requires roots in a lane: got none");
  return share;
}

/**
 * Length of [from, to] within `halfWidth` of any line, cm. All lie on one side of the tree row: what the mirror image of a line reaches
 * across the row, the line reaches too.
 *
 * @example lengthNearLines(0, 100, [50], 20) // 40
 */
export function lengthNearLines(from: number, to: number, lineAt: readonly number[], halfWidth: number): number {
  const spans = lineAt
    .map((x) => [Math.max(x - halfWidth, from), Math.min(x + halfWidth, to)])
    .filter(([a, b]) => b > a)
    .sort((p, q) => p[0] - q[0]);
  let length = 0;
  let reached = from;
  for (const [a, b] of spans) {
    if (b <= reached) continue;
    length += b - Math.max(a, reached);
    reached = b;
  }
  return length;
}
