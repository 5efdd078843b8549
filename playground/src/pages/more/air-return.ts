import type { Result } from "rootledger";
import { airMemory, type PulseAir } from "rootledger/water";

/** How long air stays away after the runs of a season that took it from some roots. */
export interface AirReturn {
  /** Openings that took the air from some roots, and those of them after which the next one came before air was back. */
  readonly openings: number;
  readonly early: number;
  /** Middle and longest time from the last closing of a run until air was back, h; undefined where it never came back. */
  readonly medianH: number | undefined;
  readonly longestH: number;
}

/** Less of the roots than this counts as none. Our choice, that of the library's account of pulses. */
const leastShare = 0.02;

/** @param gapH pause between the pulses of one run, 0 without pulses; a run's pulses count as one opening where its end is asked for */
export function airReturn(result: Result, tree: number, gapH: number): AirReturn {
  const pulses = airMemory(result, { tree }).filter(tookAir);
  const runs = airMemory({ ...result, valveH: joined(result.valveH, 1.5 * gapH) }, { tree }).filter(tookAir);
  const back = runs.flatMap(({ recoveryH }) => (recoveryH === undefined ? [] : [recoveryH])).sort((a, b) => a - b);
  return {
    openings: pulses.length,
    early: pulses.filter(({ recoveryH }) => recoveryH === undefined).length,
    medianH: back[Math.floor(back.length / 2)],
    longestH: back.at(-1) ?? 0,
  };
}

const tookAir = ({ peak, before }: PulseAir): boolean => peak > Math.max(before, leastShare);

/** Openings and closings with pauses up to a length left out. */
function joined(valveH: Float64Array, pauseH: number): Float64Array {
  const kept: number[] = [];
  for (let e = 0; e + 1 < valveH.length; e += 2) {
    const closed = kept.at(-1);
    if (closed !== undefined && valveH[e]! - closed <= pauseH) kept[kept.length - 1] = valveH[e + 1]!;
    else kept.push(valveH[e]!, valveH[e + 1]!);
  }
  return Float64Array.from(kept);
}
