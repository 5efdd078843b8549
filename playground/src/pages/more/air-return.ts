import type { Result } from "rootledger";
import { airMemory, type PulseAir } from "rootledger/water";

/** How long air stays away after the openings of a season that took it from some roots. */
export interface AirReturn {
  /** Openings that took the air from some roots. */
  readonly openings: number;
  /** Of them, those after which the next one came before air was back. */
  readonly early: number;
  /**
   * Middle and longest time until air was back, h, after openings that were followed by the long pause of their programme;
   * undefined where it never came back.
   */
  readonly medianH: number | undefined;
  readonly longestH: number;
}

/** Less of the roots than this counts as none. Our choice, that of the library's account of pulses. */
const leastShare = 0.02;

/** @param gapH pause between the pulses of one run, 0 without pulses: what follows such a pause says nothing of the time that air needs */
export function airReturn(result: Result, tree: number, gapH: number): AirReturn {
  const all = airMemory(result, { tree });
  const taken = all.map((pulse, i) => ({ pulse, next: all[i + 1] })).filter(({ pulse }) => tookAir(pulse));
  const back = taken
    .filter(({ pulse, next }) => next === undefined || next.opensH - pulse.closesH > 1.5 * gapH)
    .flatMap(({ pulse: { recoveryH } }) => (recoveryH === undefined ? [] : [recoveryH]))
    .sort((a, b) => a - b);
  return {
    openings: taken.length,
    early: taken.filter(({ pulse }) => pulse.recoveryH === undefined).length,
    medianH: back[Math.floor(back.length / 2)],
    longestH: back.at(-1) ?? 0,
  };
}

const tookAir = ({ peak, before }: PulseAir): boolean => peak > Math.max(before, leastShare);
