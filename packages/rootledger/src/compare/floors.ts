import type { TextureClass } from "../ground/texture.js";
import type { Horizon, Soil } from "../scenario/scenario.js";
import { measure, type Result } from "../water/result.js";
import type { Question } from "./comparison.js";

/**
 * The bucket engine's own error, by group of textures: what its results differed at most from fine-grid Richards runs of
 * the same soil, line and runs (three weeks of drip on a strip, long weekly, daily and pulsed; tests/accuracy keeps the
 * cases and holds the engine to them). Fractions of demand, of water applied, of time.
 */
const engineError = {
  coarse: { uptake: 0.03, drainageInterval: 0.03, drainagePulse: 0.006, airTime: 0.01, storage: 0.035 },
  medium: { uptake: 0.03, drainageInterval: 0.01, drainagePulse: 0.003, airTime: 0.01, storage: 0.025 },
  fine: { uptake: 0.06, drainageInterval: 0.005, drainagePulse: 0.004, airTime: 8 / 168, storage: 0.025 },
} as const;

type Group = keyof typeof engineError;

const groupOfTexture: Readonly<Record<TextureClass, Group>> = {
  sand: "coarse",
  "loamy sand": "coarse",
  "sandy loam": "coarse",
  loam: "medium",
  "silt loam": "medium",
  silt: "medium",
  "sandy clay loam": "medium",
  "clay loam": "fine",
  "silty clay loam": "fine",
  "sandy clay": "fine",
  "silty clay": "fine",
  clay: "fine",
};

/** Smallest differences that matter, our choice, no source: 1 % of water, of demand and of time. */
const mattersFraction = 0.01;

export interface Floor {
  readonly size: number;
  readonly reason: string;
}

/**
 * Size below which a difference of one measure means nothing: the engine's own error on it or the smallest difference
 * that matters, whichever is larger.
 *
 * @example floorOf("below-roots", result, soil, ["pulses"], 0).size
 */
export function floorOf(id: string, result: Result, soil: Soil, questions: readonly Question[], tree: number): Floor {
  const error = engineError[groupOf(soil)];
  const value = (name: string): number => measure(result, name).values[tree];
  const hours = result.days.rows * 24;
  const onlyPulses = questions.every((q) => q === "pulses" || q === "gap");
  const drainage = onlyPulses ? error.drainagePulse : error.drainageInterval;
  const group = groupOf(soil);
  const checked = `engine against Richards, ${group} soils`;
  switch (id) {
    case "applied":
    case "applied-depth":
    case "applied-area":
    case "runoff":
    case "evaporation":
    case "storage-change":
      return {
        size: mattersFraction * value(id === "applied-depth" || id === "applied-area" ? id : "applied"),
        reason: "smallest that matters: 1 % of the water applied",
      };
    case "transpiration":
      return { size: error.uptake * value("transpiration-wanted"), reason: checked };
    case "transpiration-ratio":
      return { size: error.uptake, reason: checked };
    case "thirsty":
    case "thirsty-severity":
      return { size: error.uptake * hours, reason: checked };
    case "airless":
    case "airless-severity":
      return { size: Math.max(error.airTime, mattersFraction) * hours, reason: checked };
    case "fine":
      return { size: Math.max(error.airTime, error.uptake) * hours, reason: checked };
    case "below-roots":
      return larger(drainage * value("applied"), mattersFraction * value("applied"), checked);
    case "below-roots-depth":
      return larger(drainage * value("applied-depth"), mattersFraction * value("applied-depth"), checked);
    case "below-roots-share":
      return larger(drainage, mattersFraction, checked);
    case "window-low-point": {
      const { waterAtAirReturnMm, waterAtPullLimitMm } = result.window;
      return {
        size: (error.storage * waterAtPullLimitMm) / (waterAtAirReturnMm - waterAtPullLimitMm),
        reason: checked,
      };
    }
    case "longest-thirsty":
    case "longest-airless":
      return { size: 12, reason: "smallest that matters: half a day" };
    default:
      return { size: 0, reason: "counted, not simulated" };
  }
}

const larger = (engine: number, matters: number, checked: string): Floor =>
  engine > matters
    ? { size: engine, reason: checked }
    : { size: matters, reason: "smallest that matters: 1 % of the water applied" };

/** The group of the horizons' textures; a soil with a curve of its own counts as the one with the widest error. */
function groupOf(soil: Soil): Group {
  const groups = soil.horizons.map(
    (horizon: Horizon): Group => ("texture" in horizon ? groupOfTexture[horizon.texture] : "fine"),
  );
  return groups.includes("fine") ? "fine" : groups.includes("medium") ? "medium" : "coarse";
}
