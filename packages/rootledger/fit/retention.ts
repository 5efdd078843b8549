import { retentionTheta, type VanGenuchtenRetention } from "../src/ground/van-genuchten-retention.js";
import { cmPerKPa } from "../src/units.js";
import { lowestNear } from "./nelder-mead.js";
import type { ClassTargets } from "./targets.js";

/** Four significant digits: far finer than the facts, coarse enough to print. */
export const rounded = (value: number): number => Number(value.toPrecision(4));

/** What one class's curve is held to, and how much each miss weighs; the weights are our choice. */
const weights = {
  /** Relative miss of water held 8-20 kPa, where shallow roots live. */
  heldTo20: 2,
  /** Relative miss of water held 8-60 and 8-1500 kPa. */
  held: 1,
  /** Relative miss of 8-40 kPa: the same information again. */
  heldTo40: 0.25,
  /** Miss of theta at 1500 kPa by 0.02, from Saxton & Rawls (2006). */
  theta1500: 0.36,
  /** Miss of theta at 33 kPa by 0.02, from Saxton & Rawls (2006): loosely. */
  theta33: 0.008,
  /** Logarithm of alpha x bubbling suction: only so that the wet end, where no fact speaks, stays usual. */
  bubbling: 0.09,
  /** Logit of thetaResidual/theta1500: only so that two parameters do not trade freely. */
  residual: 0.01,
};

/** Retention of one class; saturation is Saxton & Rawls (2006) and not fitted. */
export function fitRetention(targets: ClassTargets, bubblingSuctionCm: number): VanGenuchtenRetention {
  const { theta33, theta1500, thetaSaturated } = targets.saxtonRawls;
  const curveOf = ([a, b, c]: readonly number[]): VanGenuchtenRetention => ({
    thetaResidual: (0.98 * theta1500) / (1 + Math.exp(-a)),
    thetaSaturated: rounded(thetaSaturated),
    alphaPerCm: Math.exp(b) / bubblingSuctionCm,
    n: 1 + Math.exp(c),
  });
  const miss = (x: readonly number[]): number => {
    const curve = curveOf(x);
    const theta = (kPa: number): number => retentionTheta(curve, -kPa * cmPerKPa);
    const held = (kPa: number, mmPerM: number): number => Math.log((1000 * (theta(8) - theta(kPa))) / mmPerM);
    return (
      weights.heldTo20 * held(20, targets.held.to20.mmPerM) ** 2 +
      weights.heldTo40 * held(40, targets.held.to40.mmPerM) ** 2 +
      weights.held * held(60, targets.held.to60.mmPerM) ** 2 +
      weights.held * held(1500, targets.held.to1500.mmPerM) ** 2 +
      weights.theta1500 * ((theta(1500) - theta1500) / 0.02) ** 2 +
      weights.theta33 * ((theta(33) - theta33) / 0.02) ** 2 +
      weights.bubbling * x[1] ** 2 +
      weights.residual * x[0] ** 2
    );
  };
  let best = lowestNear(miss, [0, 0, -1], 0.3);
  for (const c of [-2, -0.3]) {
    const other = lowestNear(miss, [0, 0, c], 0.3);
    if (other.value < best.value) best = other;
  }
  const curve = curveOf(best.at);
  return {
    thetaResidual: rounded(curve.thetaResidual),
    thetaSaturated: curve.thetaSaturated,
    alphaPerCm: rounded(curve.alphaPerCm),
    n: rounded(curve.n),
  };
}
