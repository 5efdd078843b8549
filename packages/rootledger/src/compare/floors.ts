import type { Structure } from "../ground/structure.js";
import type { TextureClass } from "../ground/texture.js";
import { textureGroup } from "../ground/texture-group.js";
import type { Horizon, Soil } from "../scenario/scenario.js";
import { measure, type Result } from "../water/result.js";
import type { Question } from "./comparison.js";
import { type ChangeKind, type EngineErrors, engineErrors, type SoilGroup } from "./engine-errors.js";

/** Smallest differences that matter, our choice, no source: 1 % of water, of demand and of time. */
const mattersFraction = 0.01;
const mattersSpellH = 12;

/** What a floor rests on: the fast engine's error on a group of soils (on any, where the soil is in none), or a stated size. */
export type FloorBasis = `engine-${SoilGroup | "any"}` | "one-percent" | "half-day" | "not-simulated";

/** The size below which nothing is claimed, and on what it rests. */
export interface Floor {
  readonly size: number;
  readonly basis: FloorBasis;
  /** The basis in English. */
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
  const kind: ChangeKind = questions.every((q) => q === "pulses" || q === "gap" || q === "nitrogen")
    ? "pulses"
    : "interval";
  const errors = group === undefined ? largestErrors(kind) : engineErrors[group][kind];
  const referee = result.engine === "richards";
  const value = (name: string): number => measure(result, name).values[tree];
  const hours = result.days.rows * 24;
  const larger = (fraction: number, of: number): Floor => {
    const own = referee ? 0 : fraction;
    return own > mattersFraction
      ? {
          size: own * of,
          basis: `engine-${group ?? "any"}`,
          reason: `the fast engine's distance from the slow one, ${group ?? "any"} soils`,
        }
      : { size: mattersFraction * of, basis: "one-percent", reason: "smallest that matters: 1 %" };
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
    case "applied-at-valve":
      return larger(0, value(id));
    case "storage-change":
      return larger(errors.drainage, value("applied"));
    case "leaching-fraction":
      return larger(errors.drainage, 1);
    case "salt-below-roots":
    case "salt-storage-change":
      return larger(errors.drainage, value("salt-with-water"));
    case "root-zone-ece":
    case "root-zone-ece-end":
    case "uptake-ece":
      return larger(errors.drainage, value(id));
    case "salt-held-back":
      return larger(errors.thirstySeverity, hours);
    case "nitrogen-taken-up":
      return larger(errors.uptake, value("nitrogen-given"));
    case "nitrogen-below-roots":
    case "nitrogen-left":
      return larger(errors.drainage, value("nitrogen-given"));
    case "nitrogen-given":
    case "nitrogen-rootless-ground":
      return larger(0, value("nitrogen-given"));
    case "salt-with-water":
      return larger(0, value(id));
    case "longest-thirsty":
    case "longest-airless":
      return { size: mattersSpellH, basis: "half-day", reason: "smallest that matters: half a day" };
    default:
      return { size: 0, basis: "not-simulated", reason: "counted, not simulated" };
  }
}

/** The group of a soil's horizons; undefined where one of them has a curve that the cases lack. */
function soilGroup({ horizons }: Soil): SoilGroup | undefined {
  const known = horizons.filter(hasCaseCurve);
  if (known.length < horizons.length) return undefined;
  const [{ texture, structure }] = known;
  if (known.some((other) => other.texture !== texture)) return "layered";
  const group = textureGroup(texture);
  return group === "fine" && structure === "tight" ? "tight" : group;
}

/** Whether a horizon is of a kind that both engines were run on: a default class curve without stones. */
const hasCaseCurve = (
  horizon: Horizon,
): horizon is Horizon & { readonly texture: TextureClass; readonly structure?: Structure } =>
  "texture" in horizon &&
  horizon.classSet === undefined &&
  horizon.limits === undefined &&
  (horizon.stonesFraction ?? 0) === 0;

/** The largest error of any group, for soils that are in none. */
function largestErrors(kind: ChangeKind): EngineErrors {
  const [first, ...others] = Object.values(engineErrors).map((group) => group[kind]);
  const largest = { ...first };
  for (const errors of others) {
    for (const key of Object.keys(largest) as (keyof EngineErrors)[]) {
      if (errors[key] > largest[key]) largest[key] = errors[key];
    }
  }
  return largest;
}
