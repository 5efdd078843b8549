import type { Result } from "rootledger";
import type { SectionFrame } from "./section-frame.js";

/** One root as a short curve, px, and the cell it lies in. */
export interface Stroke {
  readonly cell: number;
  readonly start: readonly [number, number];
  readonly bend: readonly [number, number];
  readonly end: readonly [number, number];
}

/** Strokes on one side of the row for all roots together. */
const strokesPerSide = 260;

/**
 * Fine strokes whose number in each cell follows its share of the roots. Where they lie inside the cell is a fixed
 * sequence, so the same soil always looks the same.
 */
export function rootStrokes(section: Result["section"], frame: SectionFrame): readonly Stroke[] {
  const { lanes, layers, laneEdgesCm, layerEdgesCm, rootShare } = section;
  const total = rootShare.reduce((sum, share) => sum + share, 0);
  const strokes: Stroke[] = [];
  let owed = 0;
  let turn = 0;
  for (let layer = 0; layer < layers; layer++) {
    for (let lane = 0; lane < lanes; lane++) {
      owed += (rootShare[layer * lanes + lane]! / total) * strokesPerSide;
      for (; owed >= 1; owed--) {
        turn++;
        const left = laneEdgesCm[lane]!;
        const top = layerEdgesCm[layer]!;
        const atX = left + fraction(turn * 0.754877666) * (laneEdgesCm[lane + 1]! - left);
        const atY = top + fraction(turn * 0.569840291) * (layerEdgesCm[layer + 1]! - top);
        for (const side of [-1, 1]) {
          strokes.push(stroke(frame, layer * lanes + lane, side * atX, atY, turn + (side < 0 ? 0.5 : 0)));
        }
      }
    }
  }
  return strokes;
}

/** A stroke that leans away from the trunk, more so near the surface. */
function stroke(frame: SectionFrame, cell: number, cm: number, depthCm: number, turn: number): Stroke {
  const lean = Math.sign(cm) * (0.35 + 0.6 * fraction(turn * 0.381966)) + (fraction(turn * 0.618034) - 0.5) * 1.4;
  const length = frame.width * (0.012 + 0.016 * fraction(turn * 0.7320508));
  const x = frame.x(cm);
  const y = frame.y(depthCm);
  const dx = lean * length;
  const dy = length * (0.45 + 0.7 * fraction(turn * 0.4142136));
  const bend = (fraction(turn * 0.2360679) - 0.5) * length * 0.8;
  return {
    cell,
    start: [x - dx / 2, Math.max(y - dy / 2, frame.skyHeight)],
    bend: [x + bend, y],
    end: [x + dx / 2, Math.min(y + dy / 2, frame.y(frame.depthCm))],
  };
}

const fraction = (value: number): number => value - Math.floor(value);
