import { erfc, scaledErfc } from "../numeric/error-function.js";
import { scaledExponentialIntegral } from "../numeric/exponential-integral.js";
import { integrate } from "../numeric/integrate.js";

/** Where a point source sits: on a surface that passes no other water, or deep below it. */
export type SourcePlacement = "surface" | "buried";

const distance = (caller: string, radius: number, depth: number): number => {
  const rho = Math.sqrt(radius * radius + depth * depth);
  if (!(rho > 0 && rho < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${caller} requires a place away from the source: got radius ${radius}, depth ${depth}`);
  }
  return rho;
};

/**
 * Scaled matric flux potential Phi = 8 pi phi / (alpha q) of steady flow from a point source at scaled places
 * R = alpha r/2 and Z = alpha z/2 (down), rho = sqrt(R^2 + Z^2):
 * buried Phi = exp(Z - rho)/rho ; surface Phi = 2 [exp(Z - rho)/rho - exp(2Z) E1(Z + rho)].
 * Sources: Philip (1968), Water Resour. Res. 4:1039-1047; Raats (1971), SSSAP 35:689-694; Warrick (1974), SSSAP 38:383-386; from
 * memory, and shown by the water balance of a plane. Valid for K = kSat exp(alpha h), flow that steady flow can carry, and
 * distances beyond the pond.
 * @throws RangeError at the source itself, or above a surface source. @example steadyPointSource("surface", 1, 0) // 0.296991
 */
export function steadyPointSource(placement: SourcePlacement, radius: number, depth: number): number {
  const rho = distance("steadyPointSource", radius, depth);
  if (placement === "buried") return Math.exp(depth - rho) / rho;
  requireBelow("steadyPointSource", depth);
  return 2 * Math.exp(depth - rho) * (1 / rho - scaledExponentialIntegral(depth + rho));
}

/**
 * The same after a scaled time T = alpha k t/4 since the source was opened, k = dK/dtheta constant; Phi is then the rise over
 * the uniform start. Buried: Phi = exp(Z)/(2 rho) { exp(rho) erfc[rho/(2 sqrt T) + sqrt T] + exp(-rho) erfc[rho/(2 sqrt T) -
 * sqrt T] }; surface: twice (buried - exp(2Z) int_Z^inf exp(-2Z') buried dZ'), by quadrature to 1e-10.
 * Source: Warrick (1974), SSSAP 38:383-386, from memory; shown by the water balance. Linear: answers of pulses add.
 * @throws RangeError at the source, above a surface source, or when T is not above 0.
 * @example transientPointSource("surface", 0.5, 0, 0.1) // 0.68054
 */
export function transientPointSource(placement: SourcePlacement, radius: number, depth: number, time: number): number {
  if (!(time > 0)) throw new RangeError(`transientPointSource requires time above 0: got ${time}`);
  distance("transientPointSource", radius, depth);
  if (placement === "buried") return transientBuried(radius, depth, time);
  requireBelow("transientPointSource", depth);
  const image = (above: number): number => Math.exp(-2 * above) * transientBuried(radius, depth + above, time);
  // exp(-40) of the integrand at its start is all that lies beyond; the first piece holds the peak near the source.
  const images = integrate(image, 0, 1) + integrate(image, 1, 40);
  return 2 * (transientBuried(radius, depth, time) - images);
}

function transientBuried(radius: number, depth: number, time: number): number {
  const rho = Math.sqrt(radius * radius + depth * depth);
  const root = Math.sqrt(time);
  const reach = rho / (2 * root);
  // exp(rho) erfc(reach + root) is written through erfc scaled by its own exponential, or it overflows times zero.
  const front = Math.exp(depth - reach * reach - time);
  const ahead = front * scaledErfc(reach + root);
  const behind = reach >= root ? front * scaledErfc(reach - root) : Math.exp(depth - rho) * erfc(reach - root);
  return (ahead + behind) / (2 * rho);
}

function requireBelow(caller: string, depth: number): void {
  if (!(depth >= 0))
    throw new RangeError(`${caller} requires a depth of at least 0 under a surface source: got ${depth}`);
}
