import type { Result } from "rootledger";
import { airMemory } from "rootledger/water";

/** How long air stays away after the openings of a season that took it from some roots. */
export interface AirReturn {
  /** Openings that took the air from some roots. */
  readonly openings: number;
  /** Of them, those after which the next one came before air was back. */
  readonly early: number;
  /** Of those after which it came back, the middle and the longest time, h; undefined where there is none. */
  readonly medianH: number | undefined;
  readonly longestH: number;
}

export function airReturn(result: Result, tree: number): AirReturn {
  const taken = airMemory(result, { tree }).filter(({ peak, before }) => peak > Math.max(before, leastShare));
  const back = taken.flatMap(({ recoveryH }) => (recoveryH === undefined ? [] : [recoveryH])).sort((a, b) => a - b);
  return {
    openings: taken.length,
    early: taken.length - back.length,
    medianH: back[Math.floor(back.length / 2)],
    longestH: back.at(-1) ?? 0,
  };
}

/** Less of the roots than this counts as none. Our choice, that of the library's account of pulses. */
const leastShare = 0.02;
