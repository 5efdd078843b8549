import type { CropPreset } from "./crop-preset.js";
import { avocado } from "./preset-avocado.js";
import { blueberry } from "./preset-blueberry.js";
import { citrus } from "./preset-citrus.js";
import { strawberry } from "./preset-strawberry.js";

/** The four crops that are described in depth; rows of others are in the FAO tables. */
export const cropPresets: Readonly<Record<"avocado" | "citrus" | "blueberry" | "strawberry", CropPreset>> = {
  avocado,
  citrus,
  blueberry,
  strawberry,
};
