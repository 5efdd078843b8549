/** Driplines along one row as the model needs them. */
export interface LineLayout {
  /** Distances from the tree row of the lines on one side, cm, rising; a line on the row itself is at 0. */
  readonly lineAtCm: readonly number[];
  /** Share of the tree's emitter flow that each of these places receives (both sides together); sums to 1. */
  readonly share: readonly number[];
  readonly emittersPerTree: number;
}

/**
 * Folds lines at offsets from the tree row onto one side of it.
 *
 * @param offsetsM mirror pairs such as [-0.4, 0.4], and 0 for a line on the row
 * @throws RangeError if an offset has no mirror image or spacings are not above 0.
 * @example lineLayout([-0.4, 0.4], 4, 0.4).emittersPerTree // 20
 */
export function lineLayout(offsetsM: readonly number[], treeSpacingM: number, emitterSpacingM: number): LineLayout {
  if (!(treeSpacingM > 0) || !(emitterSpacingM > 0)) {
    throw new RangeError(`lineLayout requires spacings above 0 m: got ${treeSpacingM} and ${emitterSpacingM}`);
  }
  const counts = new Map<number, number>();
  for (const offset of offsetsM) {
    const mirrored = offsetsM.filter((other) => Math.abs(other + offset) < 1e-6).length;
    const twins = offsetsM.filter((other) => Math.abs(other - offset) < 1e-6).length;
    if (mirrored !== twins)
      throw new RangeError(`lineLayout requires mirror pairs about the tree row: ${offset} m has none`);
    const at = Math.round(Math.abs(offset) * 1e6) / 1e4;
    counts.set(at, (counts.get(at) ?? 0) + 1);
  }
  const lineAtCm = [...counts.keys()].sort((a, b) => a - b);
  return {
    lineAtCm,
    share: lineAtCm.map((at) => (counts.get(at) ?? 0) / offsetsM.length),
    emittersPerTree: (offsetsM.length * treeSpacingM) / emitterSpacingM,
  };
}
