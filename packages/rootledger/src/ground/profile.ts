import type { DrainLayer } from "./covered-drain.js";
import type { SoilCurve } from "./curve.js";
import { withStones } from "./stones.js";

/** One soil material from the bottom of the one above (or the surface) down to `toCm`. */
export interface Horizon {
  readonly toCm: number;
  /** Of the fine earth. */
  readonly curve: SoilCurve;
  /** Share of the volume that is stones; 0 unless given. */
  readonly stonesFraction?: number;
}

/** Horizons top down; the last one goes on below its `toCm`. */
export type Profile = readonly Horizon[];

/**
 * @throws RangeError unless there is a horizon and their `toCm` rise from above 0.
 * @example requireProfile([{ toCm: 30, curve: defaultSoilCurve("sandy loam") }, { toCm: 100, curve: defaultSoilCurve("clay") }])
 */
export function requireProfile(profile: Profile): void {
  if (profile.length === 0) throw new RangeError("profile requires at least one horizon: got 0");
  let aboveCm = 0;
  for (const { toCm } of profile) {
    if (!(toCm > aboveCm)) {
      throw new RangeError(`profile requires horizons that go down: got toCm ${toCm} after ${aboveCm}`);
    }
    aboveCm = toCm;
  }
}

/** The curve of the whole soil, stones included, at a depth; a boundary belongs to the horizon above it. @example curveAt(profile, 25) */
export function curveAt(profile: Profile, depthCm: number): SoilCurve {
  requireProfile(profile);
  const horizon = profile.find(({ toCm }) => depthCm <= toCm) ?? profile[profile.length - 1];
  return withStones(horizon.curve, horizon.stonesFraction ?? 0);
}

/**
 * The profile between two depths as layers of one material each, stones included.
 * @throws RangeError unless 0 <= fromCm < toCm. @example profileLayers(profile, 0, 30)
 */
export function profileLayers(profile: Profile, fromCm: number, toCm: number): DrainLayer[] {
  requireProfile(profile);
  if (!(fromCm >= 0 && toCm > fromCm)) {
    throw new RangeError(`profileLayers requires 0 <= fromCm < toCm: got ${fromCm}, ${toCm}`);
  }
  const layers: DrainLayer[] = [];
  let topCm = 0;
  profile.forEach((horizon, i) => {
    const bottomCm = i === profile.length - 1 && horizon.toCm < toCm ? toCm : horizon.toCm;
    const start = Math.max(topCm, fromCm);
    const end = Math.min(bottomCm, toCm);
    if (end > start) {
      layers.push({
        curve: withStones(horizon.curve, horizon.stonesFraction ?? 0),
        thicknessCm: end - start,
      });
    }
    topCm = bottomCm;
  });
  return layers;
}
