import { circleStripShare } from "../numeric/circle-strip.js";

/** How the roots spread sideways; see the scenario's `roots.lateral`. */
export type LateralRoots =
  | { readonly kind: "along-lines"; readonly halfWidthCm: number }
  | { readonly kind: "disc"; readonly radiusCm: number };

/**
 * Share of the roots in each lane of a strip. `along-lines`: even within `halfWidthCm` of any line, none beyond, the
 * pattern of a mature tree whose roots have followed the wetted strip. `disc`: even over a disc round the trunk, counted
 * as the part of each lane, over the tree's length of row, that the disc covers.
 *
 * @throws RangeError if no lane has roots.
 * @example rootLaneShare([0, 50, 100], [0], 400, { kind: "along-lines", halfWidthCm: 50 }) // [1, 0]
 */
export function rootLaneShare(
  laneEdgesCm: ArrayLike<number>,
  lineAtCm: readonly number[],
  rowLengthCm: number,
  lateral: LateralRoots,
): Float64Array {
  const share = new Float64Array(laneEdgesCm.length - 1);
  let total = 0;
  for (let j = 0; j < share.length; j++) {
    const from = laneEdgesCm[j];
    const to = laneEdgesCm[j + 1];
    share[j] =
      lateral.kind === "disc"
        ? circleStripShare(from, to, lateral.radiusCm, rowLengthCm) * (to - from)
        : lengthNearLines(from, to, lineAtCm, lateral.halfWidthCm);
    total += share[j];
  }
  if (!(total > 0)) throw new RangeError("rootLaneShare requires roots in at least one lane: got none");
  for (let j = 0; j < share.length; j++) share[j] /= total;
  return share;
}

/**
 * Length of [from, to] within `halfWidth` of any line or its mirror image at the tree row, cm.
 *
 * @example lengthNearLines(0, 100, [50], 20) // 40
 */
export function lengthNearLines(from: number, to: number, lineAt: readonly number[], halfWidth: number): number {
  const spans = lineAt
    .flatMap((x) => [
      [x - halfWidth, x + halfWidth],
      [-x - halfWidth, -x + halfWidth],
    ])
    .map(([a, b]) => [Math.max(a, from), Math.min(b, to)])
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
