import { bisect } from "../numeric/bisect.js";
import { requirePositive } from "../numeric/require-positive.js";

/**
 * Scaled time at which water reaches the scaled distance R along the surface from a surface source, or straight up from a
 * buried one: T = exp(R)(R^2 - 2R + 2) - 2. Below R = 1 its series, sum R^(n+3)/(n!(n+3)), which does not cancel.
 * Source: Philip (1984), Water Resour. Res. 20:990-994, from memory; derived again from the steady flux. Scales:
 * `surfaceFront` and `buriedFront`. @throws RangeError when negative. @example scaledTimeSideways(1) // 0.7182818
 */
export function scaledTimeSideways(distance: number): number {
  requireDistance("scaledTimeSideways", distance);
  if (distance >= 1) return Math.exp(distance) * (distance * (distance - 2) + 2) - 2;
  let power = distance * distance * distance;
  let sum = 0;
  for (let n = 0; n < 20; n++) {
    sum += power / (n + 3);
    power *= distance / (n + 1);
  }
  return sum;
}

/**
 * Scaled time straight down from either source: T = Z^2/2 - Z + ln(1 + Z). Below Z = 0.25 its series,
 * sum (-1)^n Z^(n+3)/(n+3). Source: as `scaledTimeSideways`. @throws RangeError when negative.
 * @example scaledTimeDown(1) // 0.1931472
 */
export function scaledTimeDown(distance: number): number {
  requireDistance("scaledTimeDown", distance);
  if (distance >= 0.25) return distance * (distance / 2 - 1) + Math.log1p(distance);
  let power = distance * distance * distance;
  let sum = 0;
  for (let n = 0; n < 30; n++) {
    sum += power / (n + 3);
    power *= -distance;
  }
  return sum;
}

/** Inverse of `scaledTimeSideways`. @throws RangeError when not above 0. @example scaledReachSideways(1) // 1.09046 */
export function scaledReachSideways(time: number): number {
  requirePositive("scaledReachSideways", { time });
  return bisect((distance) => scaledTimeSideways(distance) - time, 0, 2 * Math.cbrt(3 * time));
}

/** Inverse of `scaledTimeDown`. @throws RangeError when not above 0. @example scaledReachDown(1) // 1.92413 */
export function scaledReachDown(time: number): number {
  requirePositive("scaledReachDown", { time });
  return bisect((distance) => scaledTimeDown(distance) - time, 0, 2 + Math.sqrt(1 + 2 * time));
}

/** What one source has given, and the soil that took it. */
export interface SourceVolume {
  readonly volumeCm3: number;
  /** Mean rise of the water content behind the front, m3/m3. */
  readonly thetaRise: number;
  /** Of K = kSat exp(alpha h). */
  readonly alphaPerCm: number;
}

/**
 * Wetted radius along the surface and depth under a surface point source, cm: distances are alpha x/2, times
 * alpha^3 V/(16 pi rise). The flow does not enter: at equal volume it changes nothing, since the pond is left out.
 * At large volume the depth goes with sqrt(V), the radius with ln V.
 * @throws RangeError when an argument is not above 0.
 * @example surfaceFront({ volumeCm3: 12000, thetaRise: 0.2, alphaPerCm: 0.05 }) // { radiusCm: 25.951, depthCm: 36.22 }
 */
export function surfaceFront(source: SourceVolume): { readonly radiusCm: number; readonly depthCm: number } {
  const { volumeCm3, thetaRise, alphaPerCm } = source;
  requirePositive("surfaceFront", { volumeCm3, thetaRise, alphaPerCm });
  const time = (alphaPerCm ** 3 * volumeCm3) / (16 * Math.PI * thetaRise);
  return {
    radiusCm: (2 * scaledReachSideways(time)) / alphaPerCm,
    depthCm: (2 * scaledReachDown(time)) / alphaPerCm,
  };
}

/**
 * How far the front has come straight up and straight down from a buried point source, cm, while the surface is far:
 * distances are alpha x, times alpha^3 V/(4 pi rise). @throws RangeError when an argument is not above 0.
 * @example buriedFront({ volumeCm3: 12000, thetaRise: 0.2, alphaPerCm: 0.05 }) // { upCm: 19.04, downCm: 31.2 }
 */
export function buriedFront(source: SourceVolume): { readonly upCm: number; readonly downCm: number } {
  const { volumeCm3, thetaRise, alphaPerCm } = source;
  requirePositive("buriedFront", { volumeCm3, thetaRise, alphaPerCm });
  const time = (alphaPerCm ** 3 * volumeCm3) / (4 * Math.PI * thetaRise);
  return { upCm: scaledReachSideways(time) / alphaPerCm, downCm: scaledReachDown(time) / alphaPerCm };
}

function requireDistance(caller: string, distance: number): void {
  if (!(distance >= 0)) throw new RangeError(`${caller} requires a distance of at least 0: got ${distance}`);
}
