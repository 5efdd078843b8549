import { integrate } from "../numeric/integrate.js";
import type { SoilCurve } from "./curve.js";

/**
 * Integral over head from a dry one up to 0, of a weight times conductivity, cm2/h, even in ln(1 + |h|) and split at the
 * heads where curves bend. @throws RangeError when the head is not below 0.
 */
export function conductivityIntegralCm2PerH(
  curve: SoilCurve,
  fromHeadCm: number,
  weightAt: (headCm: number) => number,
): number {
  if (!(fromHeadCm < 0 && fromHeadCm > Number.NEGATIVE_INFINITY)) {
    throw new RangeError(`an integral over head requires a start below 0 cm: got ${fromHeadCm}`);
  }
  const at = (stretched: number): number => {
    const suctionCm = Math.expm1(stretched);
    return weightAt(-suctionCm) * curve.conductivityAt(-suctionCm) * (1 + suctionCm);
  };
  const end = Math.log1p(-fromHeadCm);
  const pieces = Math.ceil(2 * end);
  let sum = 0;
  for (let k = 0; k < pieces; k++) sum += integrate(at, (end * k) / pieces, (end * (k + 1)) / pieces);
  return sum;
}
