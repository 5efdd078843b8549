import type { Texture, TextureClass } from "./texture.js";

/**
 * The sand and clay that stand for each class. Source: Saxton & Rawls (2006), SSSAJ 70:1569-1578, table of class values
 * at 2.5 % organic matter; ten rows seen in a secondary listing, sandy clay and clay from memory.
 */
const centres: Readonly<Record<TextureClass, Texture>> = {
  sand: { sandFraction: 0.88, clayFraction: 0.05 },
  "loamy sand": { sandFraction: 0.8, clayFraction: 0.05 },
  "sandy loam": { sandFraction: 0.65, clayFraction: 0.1 },
  loam: { sandFraction: 0.4, clayFraction: 0.2 },
  "silt loam": { sandFraction: 0.2, clayFraction: 0.15 },
  silt: { sandFraction: 0.1, clayFraction: 0.05 },
  "sandy clay loam": { sandFraction: 0.6, clayFraction: 0.25 },
  "clay loam": { sandFraction: 0.3, clayFraction: 0.35 },
  "silty clay loam": { sandFraction: 0.1, clayFraction: 0.35 },
  "sandy clay": { sandFraction: 0.5, clayFraction: 0.4 },
  "silty clay": { sandFraction: 0.1, clayFraction: 0.45 },
  clay: { sandFraction: 0.25, clayFraction: 0.5 },
};

/** Representative sand and clay of a texture class. @example textureCentre("loam") // { sandFraction: 0.4, clayFraction: 0.2 } */
export const textureCentre = (textureClass: TextureClass): Texture => centres[textureClass];

/** Organic matter of the class values of Saxton & Rawls (2006): 2.5 % by weight. */
export const usualOrganicMatterFraction = 0.025;
