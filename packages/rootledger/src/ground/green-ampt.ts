import { requirePositive } from "../numeric/require-positive.js";

/** Soil as the sharp front of Green & Ampt sees it. */
export interface GreenAmptSoil {
  /** Conductivity of the wetted soil, cm/h; Rawls et al. (1983) take half of the saturated one. */
  readonly conductivityCmPerH: number;
  /** Suction at the front, cm, positive. */
  readonly frontSuctionCm: number;
  /** Water content behind the front less that ahead of it, m3/m3. */
  readonly thetaDeficit: number;
}

/** What a Green-Ampt column has taken in. */
export interface Infiltrated {
  readonly cumulativeCm: number;
  readonly rateCmPerH: number;
}

/**
 * Rate at which ponded soil takes water once F cm are in: f = K (1 + psi d/F), cm/h; without end at F = 0.
 * Source: Green & Ampt (1911), J. Agric. Sci. 4:1-24, as in Chow, Maidment & Mays (1988), eq. 4.3.7, from memory.
 * @throws RangeError when a number of the soil is not above 0 or F is negative.
 * @example greenAmptRateCmPerH({ conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.34 }, 3.17) // 1.81
 */
export function greenAmptRateCmPerH(soil: GreenAmptSoil, cumulativeCm: number): number {
  const storeCm = frontStoreCm("greenAmptRateCmPerH", soil);
  requireDepth("greenAmptRateCmPerH", cumulativeCm);
  return soil.conductivityCmPerH * (1 + storeCm / cumulativeCm);
}

/**
 * Water taken in under a shallow pond: F - P ln(1 + F/P) = K t with P = psi d, solved to the last digits, and its rate.
 * Source: Chow, Maidment & Mays (1988), eq. 4.3.6, from memory. Uniform soil, one dimension, no water table.
 * @param cumulativeBeforeCm what the soil has already taken in when the pond appears
 * @throws RangeError when a number of the soil or the hours are not above 0, or the water before is negative.
 * @example greenAmptPonded({ conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.3402 }, 1).cumulativeCm // 3.17
 */
export function greenAmptPonded(soil: GreenAmptSoil, hours: number, cumulativeBeforeCm = 0): Infiltrated {
  const storeCm = frontStoreCm("greenAmptPonded", soil);
  requirePositive("greenAmptPonded", { hours });
  requireDepth("greenAmptPonded", cumulativeBeforeCm);
  const before = cumulativeBeforeCm / storeCm;
  const scaledTime = excessOverLog(before) + (soil.conductivityCmPerH * hours) / storeCm;
  const cumulativeCm = storeCm * solveScaled(scaledTime);
  return { cumulativeCm, rateCmPerH: greenAmptRateCmPerH(soil, cumulativeCm) };
}

/**
 * Time, h, that the pond needs to bring in F cm from the start: t = [F - P ln(1 + F/P)] / K.
 * @example greenAmptTimeH({ conductivityCmPerH: 0.65, frontSuctionCm: 16.7, thetaDeficit: 0.3402 }, 3.17) // 1.00
 */
export function greenAmptTimeH(soil: GreenAmptSoil, cumulativeCm: number): number {
  const storeCm = frontStoreCm("greenAmptTimeH", soil);
  requireDepth("greenAmptTimeH", cumulativeCm);
  return (storeCm * excessOverLog(cumulativeCm / storeCm)) / soil.conductivityCmPerH;
}

/** x - ln(1 + x); below 0.03 by its series, where the difference would cancel. */
function excessOverLog(x: number): number {
  if (x > 0.03) return x - Math.log1p(x);
  let power = x * x;
  let sum = 0;
  for (let n = 2; n < 14; n++) {
    sum += power / n;
    power *= -x;
  }
  return sum;
}

/** x of x - ln(1 + x) = time. Newton from x0 = time + sqrt(2 time), which lies above the root of this convex function. */
function solveScaled(time: number): number {
  let x = time + Math.sqrt(2 * time);
  for (;;) {
    const next = x - ((excessOverLog(x) - time) * (1 + x)) / x;
    if (!(next < x * (1 - 1e-15))) return next;
    x = next;
  }
}

function frontStoreCm(caller: string, soil: GreenAmptSoil): number {
  const { conductivityCmPerH, frontSuctionCm, thetaDeficit } = soil;
  requirePositive(caller, { conductivityCmPerH, frontSuctionCm, thetaDeficit });
  return frontSuctionCm * thetaDeficit;
}

function requireDepth(caller: string, cumulativeCm: number): void {
  if (!(cumulativeCm >= 0 && cumulativeCm < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${caller} requires a depth of water of at least 0: got ${cumulativeCm}`);
  }
}
