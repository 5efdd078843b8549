import { headFromTension } from "../units.js";
import { osmoticKPaPerDsPerM } from "./salinity-water.js";

/**
 * Osmotic head of soil water, cm, negative: 36 kPa for each dS/m of the soil water's own EC (not of its extract). Source: US Salinity
 * Laboratory (1954), Agriculture Handbook 60. Valid to about 30 dS/m.
 *
 * @throws RangeError if EC is negative.
 * @example osmoticHeadCm(2) // -734.4
 */
export function osmoticHeadCm(soilWaterEcDsPerM: number): number {
  if (!(soilWaterEcDsPerM >= 0)) throw new RangeError(`osmoticHeadCm requires an EC from 0: got ${soilWaterEcDsPerM}`);
  return headFromTension(osmoticKPaPerDsPerM * soilWaterEcDsPerM);
}
