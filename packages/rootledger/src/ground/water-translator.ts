import { bisect } from "../numeric/bisect.js";
import { cm3PerL, headFromTension, mmPerCm } from "../units.js";
import type { DrainLayer } from "./covered-drain.js";
import { wiltingTensionKPa } from "./measured-limits.js";

/** One state of a root zone said in every unit growers use. */
export interface WaterReading {
  readonly tensionKPa: number;
  /** Share of total available water that is gone; below 0 when wetter than full, above 1 when drier than wilting. */
  readonly depletionFraction: number;
  readonly depletionMm: number;
  /** Litres missing on the area given, undefined without one. */
  readonly depletionL: number | undefined;
  /** All the water in the zone. */
  readonly waterMm: number;
}

/** From any measure of dryness to all of them. */
export interface WaterTranslator {
  /** Water between full and wilting (TAW). */
  readonly availableMm: number;
  readonly fullMm: number;
  readonly saturatedMm: number;
  /** From a tension, kPa. */
  fromTension(tensionKPa: number): WaterReading;
  /** From a share of the available water. */
  fromDepletionFraction(depletionFraction: number): WaterReading;
  /** From a depletion, mm. */
  fromDepletionMm(depletionMm: number): WaterReading;
  /** From a depletion, L per tree. */
  fromDepletionL(depletionL: number): WaterReading;
}

/** The ground between whose measures of dryness is translated. */
export interface TranslatedZone {
  /** Top down; `profileLayers` makes them from horizons, stones included. */
  readonly layers: readonly DrainLayer[];
  /** What counts as full: a tension, or the water held after a drain (`fieldCapacityByDrain`). */
  readonly full: { readonly tensionKPa: number } | { readonly waterMm: number };
  /** Ground the litres are for, m2. */
  readonly areaM2?: number;
}

const wettestKPa = 1e-6;
const driestKPa = 1e6;

/**
 * Turns tension, depletion and litres of a root zone into each other, at one tension throughout the zone.
 * TAW = water when full - water at 1500 kPa; depletion = water when full - water.
 * @throws RangeError when full holds no more than wilting, the area is not above 0, or a reading is wetter than
 * saturation or drier than 1e6 kPa.
 * @example waterTranslator({ layers, full: { tensionKPa: 10 }, areaM2: 8 }).fromDepletionFraction(0.3).tensionKPa
 */
export function waterTranslator({ layers, full, areaM2 }: TranslatedZone): WaterTranslator {
  if (areaM2 !== undefined && !(areaM2 > 0)) {
    throw new RangeError(`waterTranslator requires areaM2 above 0: got ${areaM2}`);
  }
  const waterMm = (tensionKPa: number): number =>
    layers.reduce(
      (sum, { curve, thicknessCm }) => sum + mmPerCm * thicknessCm * curve.thetaAt(headFromTension(tensionKPa)),
      0,
    );
  const fullMm = "tensionKPa" in full ? waterMm(full.tensionKPa) : full.waterMm;
  const availableMm = fullMm - waterMm(wiltingTensionKPa);
  if (!(availableMm > 0)) {
    throw new RangeError(
      `waterTranslator requires more water when full than at 1500 kPa: got ${availableMm} mm between them`,
    );
  }
  const saturatedMm = waterMm(0);
  const litresPerMm = areaM2 === undefined ? undefined : areaM2 * (1e4 / mmPerCm / cm3PerL);
  const reading = (tensionKPa: number, water: number): WaterReading => ({
    tensionKPa,
    depletionFraction: (fullMm - water) / availableMm,
    depletionMm: fullMm - water,
    depletionL: litresPerMm === undefined ? undefined : (fullMm - water) * litresPerMm,
    waterMm: water,
  });
  const fromDepletionMm = (depletionMm: number): WaterReading => {
    const water = fullMm - depletionMm;
    if (water === saturatedMm) return reading(0, water);
    if (!(water < saturatedMm && water > waterMm(driestKPa))) {
      throw new RangeError(
        `waterTranslator requires water between ${waterMm(driestKPa)} and ${saturatedMm} mm: got ${water}`,
      );
    }
    if (water >= waterMm(wettestKPa)) return reading(wettestKPa, water);
    const logTension = bisect((x) => waterMm(Math.exp(x)) - water, Math.log(wettestKPa), Math.log(driestKPa));
    return reading(Math.exp(logTension), water);
  };
  return {
    availableMm,
    fullMm,
    saturatedMm,
    fromDepletionMm,
    fromTension(tensionKPa) {
      if (!(tensionKPa >= 0 && tensionKPa <= driestKPa)) {
        throw new RangeError(`waterTranslator requires tensionKPa from 0 to ${driestKPa}: got ${tensionKPa}`);
      }
      return reading(tensionKPa, waterMm(tensionKPa));
    },
    fromDepletionFraction: (depletionFraction) => fromDepletionMm(depletionFraction * availableMm),
    fromDepletionL(depletionL) {
      if (litresPerMm === undefined) {
        throw new RangeError("waterTranslator requires areaM2 to read litres: got none");
      }
      return fromDepletionMm(depletionL / litresPerMm);
    },
  };
}
