import { capillaryLengthCm } from "../ground/capillary-length.js";
import { drainCovered } from "../ground/covered-drain.js";
import type { SoilCurve } from "../ground/curve.js";
import { defaultSoilCurve } from "../ground/default-curve.js";
import type { Structure } from "../ground/structure.js";
import type { TextureClass } from "../ground/texture.js";
import { kSatFromPondCmPerH, type PondReading } from "../lines/pond-reading.js";
import { tensionFromHead } from "../units.js";

/** What a spade and a tape can tell of one field. */
export interface PitReadings {
  readonly texture: TextureClass;
  readonly pond?: PondReading;
  /** Hours after a soaking, ground covered, until the soil at `depthCm` no longer glistens or the tensiometer there passes `tensionKPa`. */
  readonly drain?: { readonly depthCm: number; readonly hours: number; readonly tensionKPa: number };
}

/** A structure word with the signs for it. */
export interface StructureGuess {
  readonly structure: Structure;
  readonly kSatCmPerH: number;
  /** Hours the word's curve takes to that tension, at most `longestDrainH`; left out without a drain reading. */
  readonly drainHours?: number;
  /** Sum over readings of |ln(read / expected)|; the smallest is the best word. */
  readonly misfit: number;
}

/** What was seen in a pit. */
export interface PitAnswer {
  /** From the pond, if one was measured. */
  readonly kSatCmPerH?: number;
  /** Factor on the conductivity at saturation of the best word's curve. */
  readonly kSatFactor?: number;
  /** Best word first. */
  readonly guesses: readonly StructureGuess[];
}

/** Longest drain looked at, h. */
export const longestDrainH = 240;
const profileCm = 100;
/** Soil that a pond draws on, before the run: about 100 kPa. Our choice. */
const dryHeadCm = -1000;

/**
 * Structure and conductivity of a field from a pond's width and the hours it takes to drain: each structure word of the texture
 * is held against what was read. Two readings cannot prove a word; they can rule one out.
 *
 * @throws RangeError if nothing was read, a number is not above 0 or the depth lies outside 1 m.
 * @example pitAnswer({ texture: "loam", pond: { kind: "round", diameterCm: 30, flowLPerH: 2 } }).guesses[0].structure
 */
export function pitAnswer({ texture, pond, drain }: PitReadings): PitAnswer {
  if (pond === undefined && drain === undefined)
    throw new RangeError("pitAnswer requires a pond or a drain: got neither");
  if (
    drain !== undefined &&
    !(drain.hours > 0 && drain.tensionKPa > 0 && drain.depthCm > 0 && drain.depthCm <= profileCm)
  ) {
    throw new RangeError(
      `pitAnswer requires drain hours and tension above 0 and a depth to ${profileCm} cm: got ${drain.hours}, ${drain.tensionKPa}, ${drain.depthCm}`,
    );
  }
  const words: readonly Structure[] = ["tight", "ordinary", "crumbly"];
  const guesses = words.map((structure): StructureGuess & { readonly read?: number } => {
    const curve = defaultSoilCurve(texture, structure);
    const read = pond === undefined ? undefined : kSatFromPondCmPerH(pond, 1 / capillaryLengthCm(curve, dryHeadCm));
    const drainHours = drain === undefined ? undefined : hoursToTension(curve, drain.depthCm, drain.tensionKPa);
    const misfit =
      (read === undefined ? 0 : Math.abs(Math.log(read / curve.kSatCmPerH))) +
      (drain === undefined || drainHours === undefined ? 0 : Math.abs(Math.log(drain.hours / drainHours)));
    return {
      structure,
      kSatCmPerH: curve.kSatCmPerH,
      misfit,
      ...(drainHours === undefined ? {} : { drainHours }),
      ...(read === undefined ? {} : { read }),
    };
  });
  guesses.sort((a, b) => a.misfit - b.misfit);
  const [{ read, kSatCmPerH }] = guesses;
  return {
    ...(read === undefined ? {} : { kSatCmPerH: read, kSatFactor: read / kSatCmPerH }),
    guesses: guesses.map(({ read: _, ...guess }) => guess),
  };
}

/** Hours of covered drain until a depth passes a tension, to a twentieth; `longestDrainH` where it does not. */
function hoursToTension(curve: SoilCurve, depthCm: number, tensionKPa: number): number {
  const cellCm = 2.5;
  const cell = Math.min(Math.floor(depthCm / cellCm), profileCm / cellCm - 1);
  const passed = (hours: number): boolean =>
    tensionFromHead(drainCovered([{ curve, thicknessCm: profileCm }], { hours, cellCm }).headCm[cell]) >= tensionKPa;
  if (!passed(longestDrainH)) return longestDrainH;
  let low = 0.05;
  let high = longestDrainH;
  while (high / low > 1.05) {
    const middle = Math.sqrt(low * high);
    if (passed(middle)) high = middle;
    else low = middle;
  }
  return high;
}
