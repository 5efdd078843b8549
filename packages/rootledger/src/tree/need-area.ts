import { canopyCover, canopyGroundM2, type Spacing, treeGroundM2 } from "./canopy-cover.js";
import { type CoverRule, localizedCoverFactor } from "./localized-cover.js";
import { canopyDensityFao56 } from "./sparse-canopy.js";

/** A tree as the need of water knows it. */
export interface NeedTree {
  readonly spacing?: Spacing;
  readonly canopyDiameterM?: number;
  readonly heightM?: number;
}

/**
 * On how much ground a tree's coefficient counts. `whole-ground`: the coefficient is of the whole orchard, as in tables of mature trees.
 * `canopy-ground`: the depth falls on the ground under the canopy (Western Australia agriculture department). `stated-cover`: on a
 * share that is told, such as the shaded share of a survey. The FAO-36 rules and `density` (FAO-56 eq. 98 without its Kc min, which is
 * bare soil that drip does not water) take a coefficient of full cover down to the cover there is. `relative-density` does the same for
 * a coefficient of mature orchards: the density of this canopy over that of `matureCover`, at most 1.
 */
export type NeedCover =
  | { readonly rule: "whole-ground" | "canopy-ground" | "density" | "relative-density" | CoverRule }
  | { readonly rule: "stated-cover"; readonly coverFraction: number };

/** Cover of the mature orchards behind tabulated coefficients: FAO-56 (Allen et al. 1998) table 12 prints 70 % for citrus; for others our choice. */
export const matureCover = 0.7;

/** Four areas that are easily mixed up, m2 per tree. The wetted and the rooted ground are others again. */
export interface NeedArea {
  /** Ground on which the depth of the coefficient counts. */
  readonly countsM2: number;
  /** Ground of the tree's spacing. */
  readonly groundM2?: number;
  /** Ground under the canopy. */
  readonly canopyM2?: number;
  readonly coverFraction?: number;
}

/**
 * Ground on which the depth of a coefficient counts, m2 per tree.
 *
 * @throws RangeError if the rule needs a canopy, a spacing or a height that is not given.
 * @example needArea({ spacing: { treeSpacingM: 4, rowSpacingM: 6 }, canopyDiameterM: 3 }, { rule: "canopy-ground" }).countsM2 // 7.07
 */
export function needArea(tree: NeedTree, cover: NeedCover): NeedArea {
  const { spacing, canopyDiameterM: diameter } = tree;
  const groundM2 = spacing === undefined ? undefined : treeGroundM2(spacing);
  const known = {
    ...(groundM2 === undefined ? {} : { groundM2 }),
    ...(diameter === undefined ? {} : { canopyM2: groundUnder(diameter, spacing) }),
    ...(diameter === undefined || spacing === undefined ? {} : { coverFraction: canopyCover(diameter, spacing) }),
  };
  const need = (value: number | undefined, what: string): number => {
    if (value === undefined) throw new RangeError(`needArea requires ${what} for ${cover.rule}: got none`);
    return value;
  };
  const ground = (): number => need(groundM2, "a spacing");
  const covered = (): number => need(known.coverFraction, "a spacing and a canopy diameter");
  switch (cover.rule) {
    case "whole-ground":
      return { countsM2: ground(), ...known };
    case "canopy-ground":
      return { countsM2: need(known.canopyM2, "a canopy diameter"), ...known };
    case "stated-cover":
      return { countsM2: ground() * cover.coverFraction, ...known };
    case "density":
    case "relative-density": {
      const shade = covered();
      const heightM = need(tree.heightM, "a height");
      const density = (cover: number): number => canopyDensityFao56({ cover, effectiveCover: cover, heightM });
      const share = density(shade) / (cover.rule === "density" ? 1 : density(matureCover));
      return { countsM2: ground() * (share < 1 ? share : 1), ...known };
    }
    default:
      return { countsM2: ground() * localizedCoverFactor(cover.rule, covered()), ...known };
  }
}

const groundUnder = (diameterM: number, spacing: Spacing | undefined): number =>
  spacing === undefined ? (Math.PI / 4) * diameterM * diameterM : canopyGroundM2(diameterM, spacing);
