import type { TextureClass } from "./texture.js";

/** Textures that behave alike under drip: how far water runs sideways, how long it stands, how far an engine may be off. */
export type TextureGroup = "coarse" | "medium" | "fine";

const coarse: readonly TextureClass[] = ["sand", "loamy sand", "sandy loam"];
const medium: readonly TextureClass[] = ["loam", "silt loam", "silt", "sandy clay loam"];

/** The group of a texture class; our grouping. @example textureGroup("loamy sand") // "coarse" */
export const textureGroup = (texture: TextureClass): TextureGroup =>
  coarse.includes(texture) ? "coarse" : medium.includes(texture) ? "medium" : "fine";
