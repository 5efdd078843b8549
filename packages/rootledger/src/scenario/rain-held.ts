import { curveNumberRunoffMm } from "../water/curve-number.js";
import { rainReachingSoil } from "../water/rain-reaching-soil.js";
import type { RainHeld, Surface } from "./scenario.js";

/**
 * What leaves, layer and curve number make of each day's rain. Run-off counts from the whole rain, since its initial abstraction already
 * holds what leaves and litter hold; canopy and layer then hold back part of the rest. Undefined where nothing is held.
 *
 * @param rainMm rain of the days of the season
 * @example rainHeld({ evaporation: "soil-limited", evaporableDepthCm: 10, canopyStorageMm: 1 }, [5]).byCanopy[0] // 0.199
 */
export function rainHeld(surface: Omit<Surface, "rain">, rainMm: ArrayLike<number>): RainHeld | undefined {
  const { canopyStorageMm, layer, curveNumber } = surface;
  if (canopyStorageMm === 0 && layer === undefined && curveNumber === undefined) return undefined;
  const column = (): Float64Array => new Float64Array(rainMm.length);
  const held = { byCanopy: column(), byLayerUnderCanopy: column(), byLayerInOpen: column(), runoff: column() };
  for (let d = 0; d < rainMm.length; d++) {
    const rain = rainMm[d];
    if (!(rain > 0)) continue;
    const runoffMm = curveNumber === undefined ? 0 : curveNumberRunoffMm(rain, curveNumber);
    const layerStorageMm = layer?.storageMm[d] ?? 0;
    const inOpen = layer?.where === "all-ground" ? layerStorageMm : 0;
    const under = split(rain - runoffMm, canopyStorageMm, layerStorageMm);
    held.runoff[d] = runoffMm / rain;
    held.byCanopy[d] = under.canopyMm / rain;
    held.byLayerUnderCanopy[d] = under.layerMm / rain;
    held.byLayerInOpen[d] = split(rain - runoffMm, 0, inOpen).layerMm / rain;
  }
  return held;
}

/** A store of nothing has no curve of its own, so a canopy without one counts as no canopy. */
const split = (rainMm: number, canopyStorageMm: number, layerStorageMm: number) =>
  canopyStorageMm > 0
    ? rainReachingSoil(rainMm, { canopyFraction: 1, canopyStorageMm, layerStorageMm })
    : rainReachingSoil(rainMm, { canopyFraction: 0, canopyStorageMm: 1, layerStorageMm });
