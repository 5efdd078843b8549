import { bisect } from "../numeric/bisect.js";
import { requirePositive } from "../numeric/require-positive.js";

/** Soil whose oxygen demand falls off with depth, S0 exp(-z/Zr), under a surface held at C0. Any one set of units. */
export interface SteadyOxygen {
  /** Diffusivity of oxygen in the soil, length2/time. */
  readonly diffusivity: number;
  /** Oxygen in the air at the surface, mass/volume of air. */
  readonly surface: number;
  /** Demand at the surface, mass/(volume of soil x time). */
  readonly demand: number;
  /** Depth Zr over which the demand falls to 1/e, length. */
  readonly decay: number;
}

/** Beyond this many decay depths the soil counts as aerobic throughout. */
const deepest = 60;

/**
 * Depth below which no oxygen is left, over Zr: the root x of 1 - exp(-x)(1 + x) = g with g = D C0 / (S0 Zr^2). Infinite if g is 1
 * or more. Source: Cook (1995); Cook & Knight (2003), SSSAJ 67:20; derived again.
 *
 * @throws RangeError if g is not above 0.
 * @example oxygenReach(0.5) // 1.67835
 */
export function oxygenReach(g: number): number {
  if (!(g > 0)) throw new RangeError(`oxygenReach requires g above 0: got ${g}`);
  if (g >= 1) return Number.POSITIVE_INFINITY;
  return bisect((x) => 1 - Math.exp(-x) * (1 + x) - g, 0, deepest);
}

/**
 * Depth below which no oxygen is left in the steady state; infinite where there is oxygen throughout.
 *
 * @throws RangeError if a figure is not above 0.
 * @example oxygenDepth({ diffusivity: 1, surface: 0.5, demand: 1, decay: 1 }) // 1.67835
 */
export function oxygenDepth(soil: SteadyOxygen): number {
  requirePositive("oxygenDepth", { ...soil });
  const { diffusivity, surface, demand, decay } = soil;
  return decay * oxygenReach((diffusivity * surface) / (demand * decay * decay));
}

/**
 * Oxygen in the air of the soil at a depth in the steady state: C0 - (S0 Zr^2 / D) (1 - exp(-z/Zr) - (z/Zr) exp(-zx/Zr)), 0 below zx.
 *
 * @throws RangeError if a figure of the soil is not above 0 or the depth is negative.
 * @example steadyOxygenAt({ diffusivity: 1, surface: 0.5, demand: 1, decay: 1 }, 1) // 0.0546
 */
export function steadyOxygenAt(soil: SteadyOxygen, depth: number): number {
  if (!(depth >= 0)) throw new RangeError(`steadyOxygenAt requires a depth from 0: got ${depth}`);
  const reach = oxygenDepth(soil);
  if (depth >= reach) return 0;
  const { diffusivity, surface, demand, decay } = soil;
  const below = reach === Number.POSITIVE_INFINITY ? 0 : Math.exp(-reach / decay);
  const z = depth / decay;
  return surface - ((demand * decay * decay) / diffusivity) * (1 - Math.exp(-z) - z * below);
}
