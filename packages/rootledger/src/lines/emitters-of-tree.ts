/** One emitter and its place from the trunk, m. */
export interface EmitterPlace {
  /** Along the row. */
  readonly alongM: number;
  /** Across the row. */
  readonly acrossM: number;
  readonly fromTrunkM: number;
}

/** Lines and emitters along a row of trees. */
export interface RowLayout {
  /** Distances of the driplines from the tree row, either side signed. */
  readonly offsetsM: readonly number[];
  readonly treeSpacingM: number;
  readonly emitterSpacingM: number;
}

/**
 * The emitters on the stretch of row that belongs to one tree, line by line, from the half-way point before the trunk to the
 * one after it. The trunk stands half-way between two emitters, or at one where their number on the stretch is odd. Where
 * the emitter spacing does not divide the tree spacing, trees differ by one emitter; this is the one with fewer.
 *
 * @throws RangeError if a spacing is not above 0, no line is given, or no emitter falls to the tree.
 * @example emittersOfTree({ offsetsM: [-0.4, 0.4], treeSpacingM: 4, emitterSpacingM: 0.4 }).length // 20
 */
export function emittersOfTree({ offsetsM, treeSpacingM, emitterSpacingM }: RowLayout): EmitterPlace[] {
  if (!(treeSpacingM > 0 && emitterSpacingM > 0) || offsetsM.length === 0) {
    throw new RangeError(
      `emittersOfTree requires a line and spacings above 0 m: got ${offsetsM.length} lines, ${treeSpacingM} and ${emitterSpacingM} m`,
    );
  }
  const perLine = Math.floor(treeSpacingM / emitterSpacingM + 1e-9);
  if (perLine === 0) {
    throw new RangeError(
      `emittersOfTree requires emitters no further apart than trees, ${treeSpacingM} m: got ${emitterSpacingM} m`,
    );
  }
  return offsetsM.flatMap((acrossM) =>
    Array.from({ length: perLine }, (_, i) => {
      const alongM = (i - (perLine - 1) / 2) * emitterSpacingM;
      return { alongM, acrossM, fromTrunkM: Math.hypot(alongM, acrossM) };
    }),
  );
}

/**
 * Leaves open the emitters up to a distance from the trunk and plugs the others: one word for each emitter, true where open.
 *
 * @example openWithin(emittersOfTree({ offsetsM: [0], treeSpacingM: 2, emitterSpacingM: 0.5 }), 0.3) // [false, true, true, false]
 */
export const openWithin = (emitters: readonly EmitterPlace[], distanceM: number): boolean[] =>
  emitters.map(({ fromTrunkM }) => fromTrunkM <= distanceM + 1e-9);

/**
 * Leaves open the emitters nearest to the trunk and plugs the others; of emitters equally far, the first.
 *
 * @throws RangeError if the number is not a whole one from 1 to that of all emitters.
 * @example openNearest(emittersOfTree({ offsetsM: [0], treeSpacingM: 2, emitterSpacingM: 0.5 }), 2) // [false, true, true, false]
 */
export function openNearest(emitters: readonly EmitterPlace[], open: number): boolean[] {
  if (!Number.isInteger(open) || open < 1 || open > emitters.length) {
    throw new RangeError(`openNearest requires a whole number from 1 to ${emitters.length}: got ${open}`);
  }
  const byDistance = emitters.map(({ fromTrunkM }, at) => ({ at, fromTrunkM }));
  byDistance.sort((a, b) => a.fromTrunkM - b.fromTrunkM || a.at - b.at);
  const kept = new Set(byDistance.slice(0, open).map(({ at }) => at));
  return emitters.map((_, at) => kept.has(at));
}
