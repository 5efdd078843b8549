import { textureGroup } from "../ground/texture-group.js";
import type { Soil } from "../scenario/scenario.js";
import { measure, type Result } from "../water/result.js";
import type { Question } from "./comparison.js";
import { type ChangeKind, engineErrors, type SoilGroup } from "./engine-errors.js";

/** Smallest differences that matter, our choice, no source: 1 % of water, of demand and of time. */
const mattersFraction = 0.01;
const mattersSpellH = 12;

export interface Floor {
  readonly size: number;
  readonly reason: string;
}

/**
 * Size below which a difference of one measure means nothing: the fast engine's own error on it (none where the slow engine
 * ran) or the smallest difference that matters, whichever is larger.
 *
 * @example floorOf("below-roots", result, soil, ["pulses"], 0).size
 */
export function floorOf(id: string, result: Result, soil: Soil, questions: readonly Question[], tree: number): Floor {
  const group = soilGroup(soil);
  const kind: ChangeKind = questions.every((q) => q === "pulses" || q === "gap") ? "pulses" : "interval";
  const errors = engineErrors[group][kind];
  const referee = result.engine === "richards";
  const value = (name: string): number => measure(result, name).values[tree];
  const hours = result.days.rows * 24;
  const larger = (fraction: number, of: number): Floor => {
    const own = referee ? 0 : fraction;
    return own > mattersFraction
      ? { size: own * of, reason: `the fast engine's distance from the slow one, ${group} soils` }
      : { size: mattersFraction * of, reason: "smallest that matters: 1 %" };
  };
  switch (id) {
    case "transpiration":
      return larger(errors.uptake, value("transpiration-wanted"));
    case "transpiration-ratio":
      return larger(errors.uptake, 1);
    case "thirsty":
      return larger(errors.thirstyTime, hours);
    case "airless":
      return larger(errors.airlessTime, hours);
    case "fine":
      return larger(errors.thirstyTime > errors.airlessTime ? errors.thirstyTime : errors.airlessTime, hours);
    case "thirsty-severity":
      return larger(errors.thirstySeverity, hours);
    case "airless-severity":
      return larger(errors.airlessSeverity, hours);
    case "below-roots":
      return larger(errors.drainage, value("applied"));
    case "below-roots-depth":
      return larger(errors.drainage, value("applied-depth"));
    case "below-roots-share":
      return larger(errors.drainage, 1);
    case "evaporation":
      return larger(errors.evaporation, value("applied"));
    case "runoff":
      return larger(errors.runoff, value("applied"));
    case "window-low-point":
      return larger(errors.lowPoint, 1);
    case "applied":
    case "applied-depth":
    case "applied-area":
      return larger(0, value(id));
    case "storage-change":
      return larger(errors.drainage, value("applied"));
    case "longest-thirsty":
    case "longest-airless":
      return { size: mattersSpellH, reason: "smallest that matters: half a day" };
    default:
      return { size: 0, reason: "counted, not simulated" };
  }
}

/** The group of a soil's horizons; one with a curve that the cases lack counts as tight, the group with the widest errors. */
function soilGroup(soil: Soil): SoilGroup {
  const [top] = soil.horizons;
  if (!("texture" in top) || (top.curveSet ?? "default") !== "default" || top.limits !== undefined) return "tight";
  if (soil.horizons.some((h) => !("texture" in h) || h.texture !== top.texture)) return "layered";
  const group = textureGroup(top.texture);
  return group === "fine" && top.structure === "tight" ? "tight" : group;
}
