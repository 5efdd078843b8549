import { headFromTension } from "../units.js";
import type { SoilCurve } from "./curve.js";
import { withThetaMapped } from "./pore-map.js";

/** Water contents somebody measured or was told. */
export interface MeasuredLimits {
  readonly fieldCapacity: number;
  /** Tension at which field capacity was read, kPa; 10 and 33 are usual. */
  readonly fieldCapacityTensionKPa: number;
  /** At 1500 kPa. */
  readonly wiltingPoint: number;
  /** Left out, the pores wetter than field capacity stay as large as the class's. */
  readonly saturation?: number;
}

/** Tension of the permanent wilting point, kPa (FAO-56, ch. 8). */
export const wiltingTensionKPa = 1500;

/**
 * A class curve bent so that it passes through measured limits; conductivity at a tension stays the class's.
 * @throws RangeError unless 0 < wiltingPoint < fieldCapacity < saturation < 1 and 0 < fieldCapacityTensionKPa < 1500.
 * @example curveFromLimits(defaultSoilCurve("loam"), { fieldCapacity: 0.28, fieldCapacityTensionKPa: 10, wiltingPoint: 0.12 }, "my loam")
 */
export function curveFromLimits(curve: SoilCurve, limits: MeasuredLimits, name: string): SoilCurve {
  const { fieldCapacity, fieldCapacityTensionKPa, wiltingPoint } = limits;
  if (!(fieldCapacityTensionKPa > 0 && fieldCapacityTensionKPa < wiltingTensionKPa)) {
    throw new RangeError(
      `curveFromLimits requires fieldCapacityTensionKPa between 0 and 1500: got ${fieldCapacityTensionKPa}`,
    );
  }
  const usualCapacity = curve.thetaAt(headFromTension(fieldCapacityTensionKPa));
  const usualWilting = curve.thetaAt(headFromTension(wiltingTensionKPa));
  const saturation = limits.saturation ?? fieldCapacity + curve.thetaSaturated - usualCapacity;
  if (!(wiltingPoint > 0 && wiltingPoint < fieldCapacity && fieldCapacity < saturation && saturation < 1)) {
    throw new RangeError(
      `curveFromLimits requires 0 < wiltingPoint < fieldCapacity < saturation < 1: got ${wiltingPoint}, ${fieldCapacity}, ${saturation}`,
    );
  }
  return withThetaMapped(
    curve,
    [
      { from: 0, to: 0 },
      { from: usualWilting, to: wiltingPoint },
      { from: usualCapacity, to: fieldCapacity },
      { from: curve.thetaSaturated, to: saturation },
    ],
    name,
    `measured limits on the shape of: ${curve.source}`,
  );
}
