import type { Ground } from "../water/ground.js";
import type { Stress } from "../water/stress.js";
import { processError, type SlotName } from "./process-fault.js";

/** Rounding of a sum of shares. */
const slack = 1e-9;

interface Checked {
  readonly hour: number;
  readonly ground: Ground;
  readonly theta: Float64Array;
  readonly demandCm3PerH: number;
}

/** @throws RangeError with a fault unless factors lie in 0 to 1 and classes are 0, 1 or 2. @example checkStress(stress, 31) */
export function checkStress({ thirst, air, state }: Stress, hour: number): void {
  for (let c = 0; c < thirst.length; c++) {
    const wrong = thirst[c] >= 0 && thirst[c] <= 1 ? air[c] : thirst[c];
    if (!(wrong >= 0 && wrong <= 1)) throw processError("stress", "not-a-share", c, hour, wrong, "factors from 0 to 1");
    if (state[c] > 2) throw processError("stress", "not-a-share", c, hour, state[c], "a class of 0, 1 or 2");
  }
}

/** @throws RangeError with a fault unless every rate can be drawn and their sum is within demand. @example checkDrawn(sink, view) */
export function checkDrawn(rateCm3PerH: Float64Array, at: Checked): void {
  const sum = checkTaken("uptake", rateCm3PerH, rateCm3PerH.length, at);
  if (sum > at.demandCm3PerH * (1 + slack)) {
    const rule = `at most the demand of ${at.demandCm3PerH} cm3/h in all`;
    throw processError("uptake", "above-demand", -1, at.hour, sum, rule);
  }
}

/** @throws RangeError with a fault unless the top cell of every lane can give what is asked. @example checkEvaporated(out, view) */
export function checkEvaporated(rateCm3PerH: Float64Array, at: Checked): void {
  checkTaken("evaporation", rateCm3PerH, at.ground.grid.lanes, at);
}

function checkTaken(
  slot: SlotName,
  rateCm3PerH: Float64Array,
  count: number,
  { hour, ground, theta }: Checked,
): number {
  const { volumeCm3 } = ground.grid;
  const { thetaResidual } = ground;
  let sum = 0;
  for (let c = 0; c < count; c++) {
    const rate = rateCm3PerH[c];
    if (!(rate >= 0)) {
      const code = Number.isNaN(rate) ? "not-finite" : "negative";
      throw processError(slot, code, c, hour, rate, "a rate of 0 cm3/h or more");
    }
    const held = (theta[c] - thetaResidual[c]) * volumeCm3[c];
    if (rate > held && rate > 0) {
      const code = Number.isFinite(rate) ? "more-than-available" : "not-finite";
      throw processError(slot, code, c, hour, rate, `at most the ${held} cm3 in an hour that the cell holds`);
    }
    sum += rate;
  }
  return sum;
}
