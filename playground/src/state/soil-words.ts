import { textureClasses } from "rootledger/ground";

export const structureWords = ["tight", "ordinary", "crumbly"] as const;
export type StructureWord = (typeof structureWords)[number];

/** The texture classes the library has curves for. */
export const textures: readonly string[] = textureClasses;
