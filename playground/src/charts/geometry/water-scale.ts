import { interpolateLab, piecewise, rgb } from "d3";

/** Water content at which the scale is full, m3/m3; the wettest saturated soils lie near it. */
export const fullWater = 0.5;

const steps = 256;

/** Colours of water content from dry to full, through CIELAB so that equal steps look equal: `[step * 3 + channel]`. */
export function waterColours(dry: string, middle: string, full: string): Uint8ClampedArray {
  const colour = piecewise(interpolateLab, [dry, middle, full]);
  const out = new Uint8ClampedArray(steps * 3);
  for (let i = 0; i < steps; i++) {
    const { r, g, b } = rgb(colour(i / (steps - 1)));
    out.set([r, g, b], i * 3);
  }
  return out;
}

/** @example waterStep(0.25) // 128 */
export function waterStep(theta: number): number {
  const step = ((theta / fullWater) * steps) | 0;
  return step < 0 ? 0 : step > steps - 1 ? steps - 1 : step;
}
