import { type SoilCurve, tabulateSoil } from "rootledger/ground";
import {
  type BottomEdge,
  emptyFluxes,
  fillGround,
  type RichardsOptions,
  richardsEngine,
  stateAtHeads,
  stripGrid,
  trapezoid,
} from "rootledger/water";

/** A vertical column of 1 cm2 without roots or evaporation. */
export interface ColumnShape {
  readonly curve: SoilCurve;
  readonly depthCm: number;
  readonly cells: number;
  /** Head at the start, by depth of the cell's middle. */
  readonly startHeadCm: (depthCm: number) => number;
  readonly top: { readonly headCm: number } | { readonly fluxCmPerH: number };
  readonly bottom: BottomEdge;
  readonly options?: RichardsOptions;
}

export interface ColumnRun {
  runTo(hours: number): void;
  /** Linear between cell middles and the heads held at the ends. */
  headAt(depthCm: number): number;
  /** Depth where the head passes a value for the last time, linear between cell middles. */
  depthOfHead(headCm: number): number;
  depthOfTheta(theta: number): number;
  readonly theta: Float64Array;
  readonly headCm: () => Float64Array;
  /** Water that came in through the surface since the start, cm. */
  infiltratedCm(): number;
  /** Water that left through the bottom, cm. */
  drainedCm(): number;
  /** Stored now less stored at the start, less what came in and out, cm. */
  residualCm(): number;
  readonly work: { readonly steps: number; readonly rounds: number };
}

export const noRoots = trapezoid({
  wetZeroHeadCm: -10,
  wetFullHeadCm: -25,
  dryFullHeadCm: -500,
  dryZeroHeadCm: -8000,
});

/** @example column(shape).infiltratedCm() */
export function column(shape: ColumnShape): ColumnRun {
  const { curve, depthCm, cells, top } = shape;
  const size = depthCm / cells;
  const grid = stripGrid({
    layerEdgesCm: Array.from({ length: cells + 1 }, (_, i) => (i === cells ? depthCm : i * size)),
    laneEdgesCm: [0, 1],
    rowLengthCm: 1,
    sides: 1,
  });
  const ground = fillGround(grid, [tabulateSoil(curve)], new Uint8Array(cells));
  const held = "headCm" in top;
  const engine = richardsEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: new Float64Array(cells), compensationOnset: 1 },
    innerEdge: "mirror",
    stress: noRoots,
    bottom: shape.bottom,
    ...(held ? { top: { kind: "head", headCm: [top.headCm] } } : {}),
    options: shape.options ?? {},
  });
  const middle = (i: number): number => (i + 0.5) * size;
  const state = stateAtHeads(
    ground,
    Float64Array.from({ length: cells }, (_, i) => shape.startHeadCm(middle(i))),
  );
  const stored = (): number => state.theta.reduce((sum, t) => sum + t * size, 0);
  const startCm = stored();
  const fluxes = emptyFluxes(grid);
  const forcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: Float64Array.of(held ? 0 : top.fluxCmPerH),
    evaporationCm3PerH: new Float64Array(1),
    transpirationCm3PerH: 0,
  };
  const heads = (): Float64Array => state.headCm ?? new Float64Array(cells);
  const infiltrated = (): number => engine.work.heldTopCm3 + fluxes.rainCm3 - fluxes.runoffCm3;
  const lastCrossing = (values: Float64Array, value: number): number => {
    for (let i = cells - 2; i >= 0; i--) {
      const [above, below] = [at(values, i), at(values, i + 1)];
      if (above < value || below >= value) continue;
      return middle(i) + ((above - value) / (above - below)) * size;
    }
    return Number.NaN;
  };
  return {
    runTo: (hours) => engine.advance(state, forcing, hours, fluxes),
    headAt(depth) {
      const place = depth / size - 0.5;
      const h = heads();
      const [first, second] = [at(h, 0), at(h, 1)];
      if (place < 0)
        return held ? top.headCm + (first - top.headCm) * (place + 0.5) * 2 : first + (second - first) * place;
      const last = at(h, cells - 1);
      if (place > cells - 1) return last + (last - at(h, cells - 2)) * (place - cells + 1);
      const i = Math.min(cells - 2, Math.floor(place));
      return at(h, i) + (at(h, i + 1) - at(h, i)) * (place - i);
    },
    depthOfHead: (headCm) => lastCrossing(heads(), headCm),
    depthOfTheta: (theta) => lastCrossing(state.theta, theta),
    theta: state.theta,
    headCm: heads,
    infiltratedCm: infiltrated,
    drainedCm: () => fluxes.bottomCm3,
    residualCm: () => stored() - startCm - infiltrated() + fluxes.bottomCm3,
    work: engine.work,
  };
}

const at = (values: Float64Array, i: number): number => values[i] ?? Number.NaN;
