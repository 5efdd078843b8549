import { column, type Result } from "./result.js";

/** Air of the roots round one opening of the valve. Hours since the season's start. */
export interface PulseAir {
  readonly opensH: number;
  readonly closesH: number;
  /** Share of the roots without air in the hour before the valve opened, and the most until the next one. */
  readonly before: number;
  readonly peak: number;
  /**
   * Hours from closing until the airless share is back to what it was before, or to the asked share if that is more; 0 if the pulse
   * did not raise it beyond. Undefined if the next pulse or the end of the run came first: then air is borrowed from the next pulse.
   */
  readonly recoveryH: number | undefined;
}

/** Our choice, no source: less of the roots than this counts as none. */
const negligibleShare = 0.02;

/**
 * "Air memory": for every pulse how much of the roots it takes the air from and how long after closing that lasts. Where recovery is
 * longer than the gap, `before` rises from pulse to pulse. Read from hourly means, so a recovery is known to the hour.
 *
 * @param atShare share of the roots without air that counts as air being back; default 0.02
 * @throws RangeError if the tree is not there or the share is not in [0, 1).
 * @example airMemory(result)[0]?.recoveryH
 */
export function airMemory(
  result: Result,
  { tree = 0, atShare = negligibleShare }: { readonly tree?: number; readonly atShare?: number } = {},
): readonly PulseAir[] {
  const { trees, valveH } = result;
  if (!(Number.isInteger(tree) && tree >= 0 && tree < trees.length))
    throw new RangeError(`airMemory requires a tree from 0 to ${trees.length - 1}: got ${tree}`);
  if (!(atShare >= 0 && atShare < 1)) throw new RangeError(`airMemory requires atShare in [0, 1): got ${atShare}`);
  const { values } = column(result.hours, "airlessShare");
  const at = (hour: number): number => values[hour * trees.length + tree];
  const endH = result.status.kind === "finished" ? result.hours.rows : result.status.hour;
  const pulses: PulseAir[] = [];
  for (let e = 0; e + 1 < valveH.length && valveH[e] < endH; e += 2) {
    const opensH = valveH[e];
    const closesH = valveH[e + 1];
    const nextH = e + 2 < valveH.length && valveH[e + 2] < endH ? valveH[e + 2] : endH;
    const before = opensH >= 1 ? at(Math.floor(opensH) - 1) : 0;
    const enough = before > atShare ? before : atShare;
    let peak = 0;
    for (let hour = Math.floor(opensH); hour < nextH; hour++) if (at(hour) > peak) peak = at(hour);
    pulses.push({ opensH, closesH, before, peak, recoveryH: recovery(at, closesH, nextH, enough) });
  }
  return pulses;
}

/** Hours from closing to the end of the last hour above `enough`, if such an hour ends before the next pulse. */
function recovery(at: (hour: number) => number, closesH: number, nextH: number, enough: number): number | undefined {
  const lastWhole = Math.floor(nextH) - 1;
  let hour = Math.floor(closesH);
  if (hour > lastWhole) return undefined;
  while (hour <= lastWhole && at(hour) > enough) hour++;
  if (hour > lastWhole) return undefined;
  return hour > closesH ? hour - closesH : 0;
}
