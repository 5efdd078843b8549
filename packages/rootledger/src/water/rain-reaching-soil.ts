import { canopyInterceptionMm } from "./canopy-interception.js";
import { heldByLayerMm } from "./litter-layer.js";

/** What stands between a day's rain and the soil, for ground of one kind. */
export interface RainCover {
  /** Share of this ground under canopy. */
  readonly canopyFraction: number;
  readonly canopyStorageMm: number;
  /** Store of litter or mulch on this ground, mm; 0 where it is bare. Water from drip lines under it is not held. */
  readonly layerStorageMm: number;
}

/** Where a day's rain goes before it meets the soil, mm over this ground; the three sum to the rain. */
export interface RainSplit {
  readonly canopyMm: number;
  readonly layerMm: number;
  readonly soilMm: number;
}

/**
 * Rain less what the canopy holds, less what the layer holds: one event a day, both dry before it, which is generous to them on days
 * after rain. Order and rule are our choice.
 *
 * @throws RangeError where `canopyInterceptionMm` does, or if the layer's store is negative.
 * @example rainReachingSoil(10, { canopyFraction: 0.5, canopyStorageMm: 1, layerStorageMm: 2 }).soilMm // 7.5
 */
export function rainReachingSoil(rainMm: number, cover: RainCover): RainSplit {
  const { canopyFraction, canopyStorageMm, layerStorageMm } = cover;
  if (!(layerStorageMm >= 0)) {
    throw new RangeError(`rainReachingSoil requires a layer store from 0 mm: got ${layerStorageMm}`);
  }
  const canopyMm = canopyInterceptionMm({ rainMm, coverFraction: canopyFraction, storageMm: canopyStorageMm });
  const layerMm = heldByLayerMm(rainMm - canopyMm, layerStorageMm);
  return { canopyMm, layerMm, soilMm: rainMm - canopyMm - layerMm };
}
