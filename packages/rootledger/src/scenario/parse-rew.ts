import { evaporableMm } from "../water/evaporation.js";
import type { DefaultUsed } from "../water/result.js";
import { type Fault, fault } from "./faults.js";
import { curveOf } from "./ground-of.js";
import { pick } from "./parse-default.js";
import { filledSoil } from "./parse-soil.js";
import type { Soil } from "./scenario.js";
import type { SoilFile } from "./schema-soil.js";
import { rewDefault, surfaceDefaults } from "./surface-defaults.js";

/** Whether the block's evaporation asks the soil for REW, its readily evaporable water. */
export type NeedsRew = "with-rew" | "without-rew";

/** What two-stage evaporation asks of a soil, and what only it may be given. The soil has no other fault. */
export function rewFaults(file: SoilFile, path: string, needsRew: NeedsRew, depthCm: number | undefined): Fault[] {
  const { readilyEvaporableMm: given } = file;
  const at = `${path}.readilyEvaporableMm`;
  if (needsRew === "without-rew") {
    const terms = { others: "block.surface.evaporation two-stage", given: "soil-limited" };
    return given === undefined ? [] : [fault("only-beside", at, given, terms)];
  }
  const soil = withRew(filledSoil(file, path, []), file, path, []);
  const readily = soil.readilyEvaporableMm;
  if (readily === undefined) {
    return [fault("missing", at, undefined, { expected: "REW of a soil whose top has no texture class, mm" })];
  }
  const totalMm = totalEvaporableMm(soil, depthCm ?? surfaceDefaults.evaporableDepthCm.value);
  if (readily < totalMm) return [];
  const terms = { other: "TEW, the water that evaporation can take, mm", limit: Number(totalMm.toPrecision(3)) };
  return [fault("not-below", at, readily, terms)];
}

function totalEvaporableMm(soil: Soil, depthCm: number): number {
  let fromCm = 0;
  let sum = 0;
  for (const horizon of soil.horizons) {
    const toCm = horizon.toCm < depthCm ? horizon.toCm : depthCm;
    if (toCm > fromCm) sum += evaporableMm(curveOf(horizon, soil), toCm - fromCm);
    fromCm = toCm;
  }
  return sum;
}

/** The soil with its REW, given or that of its top texture; without one where it has neither. */
export function withRew(soil: Soil, file: SoilFile, path: string, used: DefaultUsed[]): Soil {
  const [top] = soil.horizons;
  if (file.readilyEvaporableMm !== undefined) return { ...soil, readilyEvaporableMm: file.readilyEvaporableMm };
  if (!("texture" in top)) return soil;
  const readilyEvaporableMm = pick(used, `${path}.readilyEvaporableMm`, undefined, rewDefault(top.texture));
  return { ...soil, readilyEvaporableMm };
}
