import {
  faceSums,
  type SoluteEdges,
  type Spreading,
  soluteGrid,
  soluteSums,
  soluteTransport,
  stripGrid,
  type WaterMove,
} from "rootledger/water";

/** Water runs down a column of even wetness; a content is held in what enters from the start. */
export interface ColumnRun {
  readonly layerCm: number;
  readonly layers: number;
  readonly theta: number;
  readonly fluxCmPerH: number;
  readonly hours: number;
  readonly spreading: Spreading;
  readonly sliceCm?: number;
  readonly inContent?: number;
  /** Mass by slice at the start, mg/cm2. */
  readonly start?: (slices: number, slice: number) => number;
  readonly rootedLayers?: number;
}

/** Contents by slice at the end, and what left below, per cm2 of column. */
export function runColumn(run: ColumnRun) {
  const { layerCm, layers, theta, fluxCmPerH, hours } = run;
  const coarse = stripGrid({
    layerEdgesCm: Array.from({ length: layers + 1 }, (_, i) => i * layerCm),
    laneEdgesCm: [0, 1],
    rowLengthCm: 1,
    sides: 1,
  });
  const grid = soluteGrid(coarse, run.sliceCm);
  const thetaSaturated = new Float64Array(layers).fill(0.45);
  const { spreading, rootedLayers = layers } = run;
  const { advance } = soluteTransport({ grid, spreading, thetaSaturated, rootedLayers });
  const faces = faceSums(coarse);
  const even = new Float64Array(layers).fill(theta);
  const edges: SoluteEdges = {
    intakeMgPerCm3: Float64Array.of(run.inContent ?? 1),
    bottomMgPerCm3: 0,
    uptakeShare: 0,
    mostUptakeMg: 0,
  };
  const { start } = run;
  const mass = Float64Array.from({ length: grid.cells }, (_, s) => start?.(grid.slices, s) ?? 0);
  const startMg = mass.reduce((sum, mg) => sum + mg, 0);
  const sums = soluteSums(1);
  const stretch = Math.min(1, hours / 50);
  for (let t = 0; t < hours - 1e-9; t += stretch) {
    faces.downCm3.fill(fluxCmPerH * stretch);
    faces.intakeCm3.fill(fluxCmPerH * stretch);
    const move: WaterMove = {
      hours: stretch,
      thetaBefore: even,
      thetaAfter: even,
      faces,
      uptakeCm3: new Float64Array(layers),
    };
    advance(mass, move, edges, sums);
  }
  const depthCm = Array.from(grid.thicknessCm, (h, s) => h * (s + 0.5));
  const content = Array.from(mass, (mg, s) => mg / (theta * grid.thicknessCm[s]));
  const endMg = mass.reduce((sum, mg) => sum + mg, 0);
  const residual = startMg + sums.enteredMg[0] - sums.bottomMg - endMg;
  return { depthCm, content, mass, sums, residual, startMg, endMg };
}
