import { mark } from "./special-cell.js";

/**
 * Brings tension to the positive side, in place: files write suction with either sign, and the sign of most readings is that of the file. Readings of the other sign are turned
 * and marked as suspect.
 */
export function fixTensionSign(
  values: Float64Array,
  marks: Uint8Array,
): { readonly negative: boolean; readonly turned: readonly number[] } {
  let below = 0;
  let above = 0;
  for (const value of values) {
    if (value < 0) below++;
    else if (value > 0) above++;
  }
  const negative = below > above;
  const turned: number[] = [];
  for (let i = 0; i < values.length; i++) {
    if (negative ? values[i] > 0 : values[i] < 0) {
      turned.push(i);
      marks[i] = mark.suspect;
    }
    if (values[i] < 0) values[i] = -values[i];
  }
  return { negative, turned };
}
