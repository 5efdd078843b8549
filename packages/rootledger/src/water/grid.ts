/**
 * The cells of one tree's ground: layers (depth slices, edges in cm from the surface down) crossed with lanes (edges in cm
 * from the tree row outwards). Cell index = layer x lanes + lane. All volumes and areas are per tree.
 */
export interface Grid {
  readonly geometry: "strip" | "ring";
  readonly layerEdgesCm: Float64Array;
  readonly laneEdgesCm: Float64Array;
  readonly layers: number;
  readonly lanes: number;
  readonly cells: number;
  /** Thickness of each layer, cm. */
  readonly thicknessCm: Float64Array;
  /** Surface of each lane, cm2 per tree. */
  readonly laneAreaCm2: Float64Array;
  readonly volumeCm3: Float64Array;
  /** Vertical face between lane and lane + 1, per cm of depth, cm2/cm per tree; the last one is the outer wall. */
  readonly sideLengthCm: Float64Array;
  /** Distance between the centres of lane and lane + 1, cm. */
  readonly laneDistanceCm: Float64Array;
}

/** Strips from the tree row to mid-alley. */
export interface StripShape {
  readonly layerEdgesCm: readonly number[];
  readonly laneEdgesCm: readonly number[];
  /** Length of row that belongs to one tree, cm. */
  readonly rowLengthCm: number;
  /** How many mirror images of the lanes belong to the tree: 2 for a half strip, 1 where the lanes span both sides. */
  readonly sides: 1 | 2;
}

/**
 * Strip beside the row: lanes run from the tree row (first edge) to mid-alley (last edge).
 *
 * @throws RangeError if edges do not rise or there are fewer than two.
 * @example stripGrid({ layerEdgesCm: [0, 10, 20], laneEdgesCm: [0, 10], rowLengthCm: 100, sides: 2 }).volumeCm3[0] // 20000
 */
export function stripGrid(shape: StripShape): Grid {
  const lanes = shape.laneEdgesCm.length - 1;
  const laneAreaCm2 = new Float64Array(Math.max(0, lanes));
  const sideLengthCm = new Float64Array(Math.max(0, lanes));
  for (let j = 0; j < lanes; j++) {
    laneAreaCm2[j] = (shape.laneEdgesCm[j + 1] - shape.laneEdgesCm[j]) * shape.rowLengthCm * shape.sides;
    sideLengthCm[j] = shape.rowLengthCm * shape.sides;
  }
  return finishGrid("strip", shape.layerEdgesCm, shape.laneEdgesCm, laneAreaCm2, sideLengthCm);
}

/** Rings round an emitter. */
export interface RingShape {
  readonly layerEdgesCm: readonly number[];
  /** Radii, cm; the first is 0. */
  readonly laneEdgesCm: readonly number[];
  /** Emitters that belong to one tree, each with its own rings. */
  readonly emittersPerTree: number;
  /** Radius of a wall that no water crosses below ground; beyond it lies ground that no emitter reaches. Default none. */
  readonly wallAtCm?: number;
}

/**
 * Rings round an emitter, one set for each emitter of the tree.
 *
 * @throws RangeError if edges do not rise or the first radius is not 0.
 * @example ringGrid({ layerEdgesCm: [0, 10], laneEdgesCm: [0, 10], emittersPerTree: 1 }).laneAreaCm2[0] // 314.159...
 */
export function ringGrid(shape: RingShape): Grid {
  if (shape.laneEdgesCm[0] !== 0) {
    throw new RangeError(`ringGrid requires the first radius to be 0 cm: got ${shape.laneEdgesCm[0]}`);
  }
  const lanes = shape.laneEdgesCm.length - 1;
  const laneAreaCm2 = new Float64Array(Math.max(0, lanes));
  const sideLengthCm = new Float64Array(Math.max(0, lanes));
  for (let j = 0; j < lanes; j++) {
    const inner = shape.laneEdgesCm[j];
    const outer = shape.laneEdgesCm[j + 1];
    laneAreaCm2[j] = Math.PI * (outer * outer - inner * inner) * shape.emittersPerTree;
    sideLengthCm[j] = outer === shape.wallAtCm ? 0 : 2 * Math.PI * outer * shape.emittersPerTree;
  }
  return finishGrid("ring", shape.layerEdgesCm, shape.laneEdgesCm, laneAreaCm2, sideLengthCm);
}

function finishGrid(
  geometry: Grid["geometry"],
  layerEdges: readonly number[],
  laneEdges: readonly number[],
  laneAreaCm2: Float64Array,
  sideLengthCm: Float64Array,
): Grid {
  mustRise("layerEdgesCm", layerEdges);
  mustRise("laneEdgesCm", laneEdges);
  const layers = layerEdges.length - 1;
  const lanes = laneEdges.length - 1;
  const thicknessCm = new Float64Array(layers);
  const volumeCm3 = new Float64Array(layers * lanes);
  const laneDistanceCm = new Float64Array(lanes);
  for (let i = 0; i < layers; i++) {
    thicknessCm[i] = layerEdges[i + 1] - layerEdges[i];
    for (let j = 0; j < lanes; j++) volumeCm3[i * lanes + j] = laneAreaCm2[j] * thicknessCm[i];
  }
  for (let j = 0; j < lanes - 1; j++) laneDistanceCm[j] = (laneEdges[j + 2] - laneEdges[j]) / 2;
  return {
    geometry,
    layerEdgesCm: Float64Array.from(layerEdges),
    laneEdgesCm: Float64Array.from(laneEdges),
    layers,
    lanes,
    cells: layers * lanes,
    thicknessCm,
    laneAreaCm2,
    volumeCm3,
    sideLengthCm,
    laneDistanceCm,
  };
}

function mustRise(name: string, edges: readonly number[]): void {
  if (edges.length < 2) throw new RangeError(`grid requires at least two ${name}: got ${edges.length}`);
  for (let i = 1; i < edges.length; i++) {
    if (!(edges[i] > edges[i - 1])) {
      throw new RangeError(`grid requires rising ${name}: got ${edges[i]} after ${edges[i - 1]}`);
    }
  }
}
