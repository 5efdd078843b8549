import { saxtonRawls } from "./saxton-rawls.js";
import type { Structure, StructureFactors } from "./structure.js";
import type { Texture } from "./texture.js";
import { usualOrganicMatterFraction } from "./texture-centre.js";

/**
 * Bulk density that a structure word stands for, over the density of the texture: one step of 10 %. The words are our
 * choice; what a step does to pores and conductivity is Saxton & Rawls (2006), eqs 6-10 and 16.
 */
const densityFactors: Readonly<Record<Structure, number>> = {
  tight: 1.1,
  ordinary: 1,
  crumbly: 0.9,
};

/**
 * What a structure word does in a texture: ratio of the pores wetter than 33 kPa and of kSat, with the word's density
 * and without. Over the twelve classes: tight pores x 0.46-0.88 and kSat x 0.10-0.68, crumbly x 1.12-1.54 and x 1.41-3.55.
 * @throws RangeError as `saxtonRawls`. @example structureFactors({ sandFraction: 0.4, clayFraction: 0.2 }, "crumbly")
 */
export function structureFactors(
  texture: Texture,
  structure: Structure,
  organicMatterFraction: number = usualOrganicMatterFraction,
): StructureFactors {
  const soil = { ...texture, organicMatterFraction };
  const usual = saxtonRawls(soil);
  const changed = saxtonRawls({ ...soil, densityFactor: densityFactors[structure] });
  return {
    macroporeFactor: (changed.thetaSaturated - changed.theta33) / (usual.thetaSaturated - usual.theta33),
    kSatFactor: changed.kSatCmPerH / usual.kSatCmPerH,
  };
}
