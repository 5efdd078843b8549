/** Distances of trees and rows. */
export interface Spacing {
  readonly treeSpacingM: number;
  readonly rowSpacingM: number;
}

/** Ground of one tree, m2. @example treeGroundM2({ treeSpacingM: 4, rowSpacingM: 6 }) // 24 */
export const treeGroundM2 = (spacing: Spacing): number => spacing.treeSpacingM * spacing.rowSpacingM;

/**
 * Ground under one round canopy as seen from above, m2, in trees planted on a rectangle: the disc, cut where neighbours meet,
 * so that ground under two canopies counts once. Plain geometry.
 *
 * @throws RangeError if a length is not above 0.
 * @example canopyGroundM2(5, { treeSpacingM: 10, rowSpacingM: 10 }) // 19.63
 */
export function canopyGroundM2(diameterM: number, spacing: Spacing): number {
  const { treeSpacingM: length, rowSpacingM: width } = spacing;
  if (!(diameterM > 0 && length > 0 && width > 0)) {
    throw new RangeError(`canopyGroundM2 requires lengths above 0 m: got ${diameterM}, ${length} and ${width}`);
  }
  const radius = diameterM / 2;
  const reach = radius < width / 2 ? radius : width / 2;
  const meeting = radius > length / 2 ? Math.sqrt(radius * radius - (length * length) / 4) : 0;
  const full = meeting < reach ? meeting : reach;
  return 2 * (length * full + 2 * (underArc(radius, reach) - underArc(radius, full)));
}

/** Area under a quarter circle from its centre to x, at most the radius. */
function underArc(radius: number, x: number): number {
  const height = Math.sqrt((radius - x) * (radius + x));
  return 0.5 * (x * height + radius * radius * Math.atan2(x, height));
}

/** Share of the ground under canopies as seen from above. @example canopyCover(5, { treeSpacingM: 10, rowSpacingM: 10 }) // 0.196 */
export const canopyCover = (diameterM: number, spacing: Spacing): number =>
  canopyGroundM2(diameterM, spacing) / treeGroundM2(spacing);

/** Shape of the canopies as FAO-56 tells them apart for the shade they throw. */
export type CanopyShape = { readonly kind: "round" } | { readonly kind: "hedge"; readonly heightToWidth: number };

/**
 * Share of the ground shaded at solar noon: fc / sin(eta) for round canopies, fc (1 + HWR/tan(eta)) for hedges running east
 * to west, at most 1. Source: FAO-56 (Allen et al. 1998) ch. 9, box 18.
 *
 * @param noonSunHeightRad height of the sun above the horizon at noon, above 0
 * @throws RangeError if cover is not 0 to 1 or the sun does not rise.
 * @example effectiveCover(0.3, { kind: "hedge", heightToWidth: 1 }, 1.24) // 0.40
 */
export function effectiveCover(coverFraction: number, shape: CanopyShape, noonSunHeightRad: number): number {
  if (!(coverFraction >= 0 && coverFraction <= 1)) {
    throw new RangeError(`effectiveCover requires cover 0 to 1: got ${coverFraction}`);
  }
  if (!(noonSunHeightRad > 0 && noonSunHeightRad <= Math.PI / 2)) {
    throw new RangeError(`effectiveCover requires a noon sun above 0 and up to pi/2: got ${noonSunHeightRad}`);
  }
  const shade =
    shape.kind === "round"
      ? coverFraction / Math.sin(noonSunHeightRad)
      : coverFraction * (1 + shape.heightToWidth / Math.tan(noonSunHeightRad));
  return shade < 1 ? shade : 1;
}
