import type { Result } from "rootledger";

/** For every pixel of a half section: four cells and their weights, so that a picture is one pass of sums. */
export interface CellField {
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint16Array;
  readonly weights: Float32Array;
}

/**
 * Interpolation between cell centres, piecewise linear across and down. Nothing is blended across the boundary of two
 * soils, where water content really jumps.
 */
export function cellField(section: Result["section"], halfWidthCm: number, columns: number, rows: number): CellField {
  const { lanes, layers, laneEdgesCm, layerEdgesCm, thetaSaturated } = section;
  const across = places(laneEdgesCm, lanes, halfWidthCm, columns, () => true);
  const depthCm = layerEdgesCm[layers]!;
  const alike = (upper: number) => thetaSaturated[upper * lanes] === thetaSaturated[(upper + 1) * lanes];
  const down = places(layerEdgesCm, layers, depthCm, rows, alike);
  const cells = new Uint16Array(columns * rows * 4);
  const weights = new Float32Array(columns * rows * 4);
  for (let r = 0, k = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++, k += 4) {
      const v = down[r]!;
      const h = across[c]!;
      cells.set([v.low * lanes + h.low, v.low * lanes + h.high, v.high * lanes + h.low, v.high * lanes + h.high], k);
      weights.set([(1 - v.part) * (1 - h.part), (1 - v.part) * h.part, v.part * (1 - h.part), v.part * h.part], k);
    }
  }
  return { columns, rows, cells, weights };
}

interface Place {
  readonly low: number;
  readonly high: number;
  readonly part: number;
}

function places(
  edges: Float64Array,
  count: number,
  reach: number,
  samples: number,
  blends: (low: number) => boolean,
): Place[] {
  const centre = (i: number): number => (edges[i]! + edges[i + 1]!) / 2;
  return Array.from({ length: samples }, (_, s) => {
    const at = ((s + 0.5) / samples) * reach;
    let low = 0;
    while (low < count - 1 && centre(low + 1) <= at) low++;
    const high = low + 1;
    if (high >= count || at <= centre(low)) return { low, high: low, part: 0 };
    if (!blends(low)) {
      const side = at < edges[high]! ? low : high;
      return { low: side, high: side, part: 0 };
    }
    return { low, high, part: (at - centre(low)) / (centre(high) - centre(low)) };
  });
}
