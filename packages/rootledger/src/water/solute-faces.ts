import type { SoluteFlows } from "./solute-flows.js";
import type { SoluteGrid } from "./solute-grid.js";

/**
 * Content of the water that crosses each face, mg/cm3: that of the slice it leaves, carried half a slice on along its slope. The slope
 * is van Leer's (1974, J. Comput. Phys. 14:361) harmonic mean, never beyond either neighbour, less the part that the step
 * itself carries (Lax & Wendroff 1960). So the spread of plain mixing cells, half a slice, is taken back, and nothing overshoots.
 *
 * @example faceContentsInto(downContent, sideContent, content, grid, flows, water, 0.1)
 */
export function faceContentsInto(
  downContent: Float64Array,
  sideContent: Float64Array,
  content: Float64Array,
  grid: SoluteGrid,
  flows: SoluteFlows,
  waterCm3: Float64Array,
  stepH: number,
): void {
  const { slices, lanes, thicknessCm, laneWidthCm, coarse } = grid;
  const { laneDistanceCm } = coarse;
  const { down, side } = flows;
  for (let s = 0; s < slices; s++) {
    const h = thicknessCm[s];
    const toAbove = s > 0 ? 0.5 * (h + thicknessCm[s - 1]) : 1;
    const toBelow = s + 1 < slices ? 0.5 * (h + thicknessCm[s + 1]) : 1;
    for (let j = 0; j < lanes; j++) {
      const f = s * lanes + j;
      const here = content[f];
      const room = stepH / waterCm3[f];
      const above = f - lanes;
      const below = f + lanes;
      const inside = s > 0 && s + 1 < slices;
      const slope = inside ? limited(here - content[above], content[below] - here, toAbove, toBelow, h) : 0;
      if (down[f] >= 0) downContent[f] = here + 0.5 * h * slope * (1 - down[f] * room);
      if (s > 0 && down[above] < 0) downContent[above] = here - 0.5 * h * slope * (1 + down[above] * room);
      if (s + 1 === slices && down[f] < 0) downContent[f] = 0;
      const w = laneWidthCm[j];
      const between = j > 0 && j + 1 < lanes;
      const across = between
        ? limited(here - content[f - 1], content[f + 1] - here, laneDistanceCm[j - 1], laneDistanceCm[j], w)
        : 0;
      if (side[f] >= 0) sideContent[f] = here + 0.5 * w * across * (1 - side[f] * room);
      if (j > 0 && side[f - 1] < 0) sideContent[f - 1] = here - 0.5 * w * across * (1 + side[f - 1] * room);
      if (j + 1 === lanes && side[f] < 0) sideContent[f] = 0;
    }
  }
}

function limited(before: number, after: number, toBefore: number, toAfter: number, size: number): number {
  if (before * after <= 0) return 0;
  const a = before / toBefore;
  const b = after / toAfter;
  const slope = (2 * a * b) / (a + b);
  const rising = slope > 0;
  const nearer = rising ? (before < after ? before : after) : before > after ? before : after;
  const most = (2 * nearer) / size;
  return rising ? (slope < most ? slope : most) : slope > most ? slope : most;
}
