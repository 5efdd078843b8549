/**
 * Water in the full driplines along one tree, L: pi / 4 x bore^2 x length.
 *
 * @param input lines: driplines along the row
 * @throws RangeError if an argument is not above 0.
 * @example lineContentLPerTree({ innerDiameterMm: 14, lines: 2, treeSpacingM: 4 }) // 1.23
 */
export function lineContentLPerTree(input: {
  readonly innerDiameterMm: number;
  readonly lines: number;
  readonly treeSpacingM: number;
}): number {
  const { innerDiameterMm, lines, treeSpacingM } = input;
  if (!(innerDiameterMm > 0 && lines > 0 && treeSpacingM > 0)) {
    throw new RangeError(
      `lineContentLPerTree requires numbers above 0: got ${innerDiameterMm} mm, ${lines} lines, ${treeSpacingM} m`,
    );
  }
  return ((Math.PI / 4) * innerDiameterMm * innerDiameterMm * lines * treeSpacingM) / 1000;
}
