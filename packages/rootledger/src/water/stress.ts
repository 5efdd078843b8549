import type { CellValues, Ground } from "./ground.js";

/**
 * What holds uptake back in each cell, as factors between 0 (nothing drawn) and 1 (nothing held back), and which of the
 * three classes the cell is in: 0 fine, 1 thirsty, 2 airless.
 */
export interface Stress {
  readonly thirst: Float64Array;
  readonly air: Float64Array;
  readonly state: Uint8Array;
}

/** A process slot: reads theta and head, writes the two factors and the class of every cell. */
export type StressProcess = (
  out: Stress,
  ground: Ground,
  theta: Float64Array,
  values: Pick<CellValues, "headCm">,
) => void;

/** The two limits of the tree, in the model's units. A run may change them from day to day. */
export interface TreeLimits {
  /** Head beyond which uptake starts to fall, cm (the pull limit). */
  readonly pullLimitHeadCm: number;
  /** Head at which nothing more is drawn, cm. */
  readonly zeroUptakeHeadCm: number;
  /** Air-filled porosity below which roots may lack air, m3/m3. */
  readonly airLimit: number;
  /** Air-filled porosity at which the air factor reaches 0 in soil that is also wetter than the air-return head. */
  readonly airZero: number;
  /** Head above which (wetter than which) air does not return, cm. */
  readonly airReturnHeadCm: number;
}

/**
 * The two limits with equal standing. Airless: air-filled porosity below `airLimit` AND head above `airReturnHeadCm`.
 * Thirsty: head below `pullLimitHeadCm`. The thirst factor falls linearly in head from 1 at the pull limit to 0 at
 * `zeroUptakeHeadCm` (the dry limb of Feddes et al. 1978). The air factor is 1 where either airless condition fails and
 * falls to 0 as air-filled porosity reaches `airZero` in saturated soil, continuous at both limits. The limits are read at
 * each call.
 *
 * @example twoLimits(limits)(stress, ground, theta, values)
 */
export function twoLimits(limits: TreeLimits): StressProcess {
  return (out, ground, theta, values) => {
    const { pullLimitHeadCm, zeroUptakeHeadCm, airLimit, airZero, airReturnHeadCm } = limits;
    const dryRange = pullLimitHeadCm - zeroUptakeHeadCm;
    const airRange = airLimit - airZero;
    const { thirst, air, state } = out;
    const { headCm } = values;
    const { thetaSaturated } = ground;
    for (let c = 0; c < thirst.length; c++) {
      const head = headCm[c];
      const airFilled = thetaSaturated[c] - theta[c];
      if (head < pullLimitHeadCm) {
        const factor = (head - zeroUptakeHeadCm) / dryRange;
        thirst[c] = factor > 0 ? factor : 0;
        air[c] = 1;
        state[c] = 1;
      } else if (airFilled < airLimit && head > airReturnHeadCm) {
        const byAir = (airFilled - airZero) / airRange;
        const byHead = head / airReturnHeadCm;
        const factor = byAir > byHead ? byAir : byHead;
        thirst[c] = 1;
        air[c] = factor > 0 ? factor : 0;
        state[c] = 2;
      } else {
        thirst[c] = 1;
        air[c] = 1;
        state[c] = 0;
      }
    }
  };
}

/** Heads of a trapezoid, cm, from wet to dry: uptake 0, full, full, 0. */
export interface Trapezoid {
  readonly wetZeroHeadCm: number;
  readonly wetFullHeadCm: number;
  readonly dryFullHeadCm: number;
  readonly dryZeroHeadCm: number;
}

/**
 * Uptake by head alone (Feddes, Kowalik & Zaradny 1978): 0 above `wetZeroHeadCm`, linear to 1 at `wetFullHeadCm`, 1 down
 * to `dryFullHeadCm`, linear to 0 at `dryZeroHeadCm`. The wet limb counts as lack of air, the dry one as thirst.
 *
 * @example trapezoid({ wetZeroHeadCm: -10, wetFullHeadCm: -25, dryFullHeadCm: -500, dryZeroHeadCm: -8000 })
 */
export function trapezoid(shape: Trapezoid): StressProcess {
  const { wetZeroHeadCm, wetFullHeadCm, dryFullHeadCm, dryZeroHeadCm } = shape;
  return (out, _ground, _theta, values) => {
    const { thirst, air, state } = out;
    const { headCm } = values;
    for (let c = 0; c < thirst.length; c++) {
      const head = headCm[c];
      let wet = 1;
      let dry = 1;
      if (head > wetFullHeadCm)
        wet = head >= wetZeroHeadCm ? 0 : (wetZeroHeadCm - head) / (wetZeroHeadCm - wetFullHeadCm);
      else if (head < dryFullHeadCm)
        dry = head <= dryZeroHeadCm ? 0 : (head - dryZeroHeadCm) / (dryFullHeadCm - dryZeroHeadCm);
      air[c] = wet;
      thirst[c] = dry;
      state[c] = wet < 1 ? 2 : dry < 1 ? 1 : 0;
    }
  };
}
