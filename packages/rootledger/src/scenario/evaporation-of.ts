import type { WaterSetup } from "../water/bucket.js";
import { twoStageEvaporation } from "../water/evaporation.js";
import type { Scenario } from "./scenario.js";

/** Two-stage evaporation where the block asks for it. @throws RangeError if the soil has no REW. @example evaporationOf(scenario).evaporationOn */
export function evaporationOf({ block, soil }: Scenario): Pick<WaterSetup, "evaporationOn"> {
  const { surface } = block;
  if (surface?.evaporation !== "two-stage") return {};
  const { readilyEvaporableMm = Number.NaN } = soil;
  return {
    evaporationOn: (ground) => twoStageEvaporation(ground, { readilyEvaporableMm, depthCm: surface.evaporableDepthCm }),
  };
}
