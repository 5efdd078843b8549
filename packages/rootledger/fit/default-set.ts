import type { GardnerCurveParameters } from "../src/ground/gardner-curve.js";
import { type TextureClass, textureClasses } from "../src/ground/texture.js";
import { textureCentre } from "../src/ground/texture-centre.js";
import { exponentFor, fitConductivity } from "./conductivity.js";
import { bubblingSuctionCm, infiltration } from "./facts.js";
import { fitRetention } from "./retention.js";
import { type ClassTargets, classTargets } from "./targets.js";

export interface FittedClass {
  readonly textureClass: TextureClass;
  readonly targets: ClassTargets;
  readonly parameters: GardnerCurveParameters;
}

/** Fits one class to its targets: retention first, then the conductivity that drains it. */
export function fitClass(textureClass: TextureClass): FittedClass {
  const targets = classTargets().get(textureClass);
  if (targets === undefined) throw new RangeError(`no targets for ${textureClass}`);
  const retention = fitRetention(targets, bubblingSuctionCm[textureClass]);
  const kSatCmPerH = infiltration[textureClass].chosenMmPerH / 10;
  const exponent = exponentFor(textureCentre(textureClass));
  const conductivity = fitConductivity(retention, kSatCmPerH, exponent);
  return { textureClass, targets, parameters: { ...retention, ...conductivity } };
}

export const fitAll = (): FittedClass[] => textureClasses.map(fitClass);
