import type { Verified } from "./sourced.js";

/** What clear or black plastic takes off the single crop coefficient of drip-irrigated vegetables. */
export interface PlasticRow {
  readonly kcReduction: readonly [number, number];
  readonly verified: Verified;
}

/** Where the reductions under plastic come from. */
export const plasticMulchSource =
  "Allen, Pereira, Raes & Smith (1998), FAO Irrigation and Drainage Paper 56, ch. 10, table 25";

/** By crop, as fractions of Kc. */
export const plasticMulchTable: Readonly<Record<string, PlasticRow>> = {
  squash: { kcReduction: [0.05, 0.15], verified: "seen" },
  cucumber: { kcReduction: [0.15, 0.2], verified: "seen" },
  cantaloupe: { kcReduction: [0.05, 0.1], verified: "seen" },
  watermelon: { kcReduction: [0.25, 0.3], verified: "seen" },
  tomato: { kcReduction: [0.35, 0.35], verified: "seen" },
};

/** Kc and Kcb of the initial stage under plastic: as little as this. Source: FAO-56 ch. 10, text and example 45. */
export const plasticInitialKc = 0.1;

/**
 * Coefficients of the three anchor points under plastic: the initial one 0.10, the others (1 - reduction) times those of bare beds.
 * Kc falls by 10 to 30 % on average, Kcb by 5 to 15 %. Source: FAO-56 ch. 10, example 45.
 *
 * @throws RangeError if the reduction is not from 0 to below 1.
 * @example kcUnderPlastic([0.4, 1, 0.75], 0.15) // [0.1, 0.85, 0.6375]
 */
export function kcUnderPlastic(
  kc: readonly [number, number, number],
  reduction: number,
): readonly [number, number, number] {
  if (!(reduction >= 0 && reduction < 1)) {
    throw new RangeError(`kcUnderPlastic requires a reduction from 0 to below 1: got ${reduction}`);
  }
  return [plasticInitialKc, kc[1] * (1 - reduction), kc[2] * (1 - reduction)];
}

/**
 * What a cover of plant residue takes off soil evaporation: 5 % for every 10 % of the ground covered. Source: FAO-56 ch. 10.
 * It says nothing about thickness; see `litterLayer` for a layer that also holds back rain.
 *
 * @throws RangeError if the cover is not 0 to 1.
 * @example residueEvaporationCut(0.5) // 0.25
 */
export function residueEvaporationCut(coverFraction: number): number {
  if (!(coverFraction >= 0 && coverFraction <= 1)) {
    throw new RangeError(`residueEvaporationCut requires cover 0 to 1: got ${coverFraction}`);
  }
  return 0.5 * coverFraction;
}
