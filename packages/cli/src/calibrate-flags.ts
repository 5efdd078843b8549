import type { UnknownId } from "rootledger/chance";
import { calibrateWords } from "./words-calibrate.js";

/** Options of `calibrate`. */
export const calibrateFlags = ["readings", "fit", "block-days", "noise"] as const;

/** Fitted where nothing is named: how fast water moves, and how much the tree wants. Our choice. */
const usualFit = "k-sat,kcb";

export interface CalibrateAsked {
  readonly readingsFile: string;
  readonly fit: readonly string[];
  readonly blockDays: number;
  readonly noiseTheta: number;
}

/** The options as values, or what is wrong with one of them. */
export function calibrateAsked(flags: Readonly<Record<string, string>>): CalibrateAsked | string {
  const { readings, fit = usualFit, noise = "0.02" } = flags;
  const blockDays = flags["block-days"] ?? "10";
  if (readings === undefined) return calibrateWords.readingsNeeded;
  if (!/^[1-9]\d{0,3}$/.test(blockDays)) return `--block-days ${calibrateWords.wholeNumber}: got ${blockDays}`;
  const noiseTheta = Number(noise);
  if (!/^[\d.]+$/.test(noise) || !(noiseTheta > 0 && noiseTheta < 0.5)) {
    return `--noise ${calibrateWords.noiseRange}: got ${noise}`;
  }
  return { readingsFile: readings, fit: fit.split(","), blockDays: Number(blockDays), noiseTheta };
}

/** A name given to `--fit` that is none of the unknowns that a fit can move. */
export const strangeName = (fit: readonly string[], known: readonly UnknownId[]): string | undefined =>
  fit.find((name, i) => !known.some((id) => id === name) || fit.indexOf(name) < i);
