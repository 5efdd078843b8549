import { readFileSync } from "node:fs";
import {
  emptyFluxes,
  fillGround,
  type Grid,
  type RichardsOptions,
  richardsEngine,
  stateAtHeads,
  stripGrid,
  trapezoid,
  type WaterEngine,
  type WaterSetup,
} from "rootledger/water";
import { type ReferenceSoil, tableOf } from "./reference-soil.js";
import { lastWet, overlap } from "./wetted.js";

export interface DrainCase {
  readonly id: string;
  readonly soil: ReferenceSoil;
  readonly initialHeadCm: number;
  readonly atH: readonly number[];
  readonly thetaLayers: readonly (readonly number[])[];
  readonly drainage60Mm: readonly number[];
  readonly drainage100Mm: readonly number[];
}

export interface RainCase {
  readonly id: string;
  readonly soil: ReferenceSoil;
  readonly initialHeadCm: number;
  readonly intensityMmPerH: number;
  readonly depthMm: number;
  readonly atH: readonly number[];
  readonly thetaLayers: readonly (readonly number[])[];
  readonly frontCm: readonly number[];
  readonly infiltratedMm: number;
}

export const columnCases: { readonly drain: readonly DrainCase[]; readonly rain: readonly RainCase[] } = JSON.parse(
  readFileSync(new URL("cases/columns.json", import.meta.url), "utf8"),
);

export interface ColumnOutcome {
  readonly thetaLayers: readonly (readonly number[])[];
  readonly drainage60Mm: readonly number[];
  readonly drainage100Mm: readonly number[];
  readonly frontCm: readonly number[];
  readonly infiltratedMm: number;
  /** What the ledger does not account for, over the water at the start and the rain. */
  readonly residualFraction: number;
  readonly steps: number;
}

interface Column {
  readonly soil: ReferenceSoil;
  readonly initialHeadCm: number;
  readonly atH: readonly number[];
  readonly rainMmPerH: number;
  readonly rainH: number;
}

const layersCm = [0, 20, 40, 60, 100];

/** What solves the column; Richards on its own fine cells unless said. */
export interface Solver {
  readonly grid: Grid;
  readonly engine: (setup: WaterSetup) => WaterEngine;
}

export const byRichards = (options: RichardsOptions = {}): Solver => ({
  grid: columnGrid(),
  engine: (setup) => richardsEngine({ ...setup, options }),
});

export const runDrain = (c: DrainCase, solver = byRichards()): ColumnOutcome =>
  runColumn({ ...c, rainMmPerH: 0, rainH: 0 }, solver);

export const runRain = (c: RainCase, solver = byRichards()): ColumnOutcome =>
  runColumn({ ...c, rainMmPerH: c.intensityMmPerH, rainH: c.depthMm / c.intensityMmPerH }, solver);

/** Cells of a column, thin at the surface and the bottom where the reference's steepest gradients are. */
function columnGrid(): Grid {
  const edges = [0];
  while (edges[edges.length - 1] < 100) {
    const at = edges[edges.length - 1];
    const size = Math.min(0.5, 0.1 + 0.02 * at, 0.1 + 0.02 * (100 - at));
    const next = at + size;
    const stop = layersCm.find((edge) => edge > at + 1e-9) ?? 100;
    edges.push(next > stop - 0.4 * size ? stop : next);
  }
  return stripGrid({ layerEdgesCm: edges, laneEdgesCm: [0, 1], rowLengthCm: 1, sides: 1 });
}

function runColumn(column: Column, { grid, engine: makeEngine }: Solver): ColumnOutcome {
  const ground = fillGround(grid, [tableOf(column.soil)], new Uint8Array(grid.cells));
  const engine = makeEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: new Float64Array(grid.cells), compensationOnset: 1 },
    innerEdge: "mirror",
    stress: trapezoid({ wetZeroHeadCm: -10, wetFullHeadCm: -25, dryFullHeadCm: -500, dryZeroHeadCm: -8000 }),
  });
  const state = stateAtHeads(ground, new Float64Array(grid.cells).fill(column.initialHeadCm));
  const initial = state.theta.slice();
  const startCm = stored(grid, state.theta);
  const fluxes = emptyFluxes(grid);
  const at60 = grid.layerEdgesCm.indexOf(60) - 1;
  const out = {
    thetaLayers: [] as number[][],
    drainage60Mm: [] as number[],
    drainage100Mm: [] as number[],
    frontCm: [] as number[],
  };
  const moments = [...new Set([column.rainH, ...column.atH])].filter((t) => t > 0).sort((a, b) => a - b);
  for (const untilH of moments) {
    const rain = untilH <= column.rainH + 1e-9 ? column.rainMmPerH / 10 : 0;
    engine.advance(
      state,
      {
        emitterCm3PerH: 0,
        rainCm3PerH: Float64Array.of(rain),
        evaporationCm3PerH: new Float64Array(1),
        transpirationCm3PerH: 0,
      },
      untilH,
      fluxes,
    );
    if (!column.atH.includes(untilH)) continue;
    out.thetaLayers.push(layerMeans(grid, state.theta));
    out.drainage60Mm.push(fluxes.downwardCm3[at60] * 10);
    out.drainage100Mm.push(fluxes.bottomCm3 * 10);
    out.frontCm.push(lastWet(grid.layerEdgesCm, (i) => state.theta[i] - initial[i]));
  }
  const left = startCm + fluxes.rainCm3 - fluxes.runoffCm3 - fluxes.bottomCm3 - stored(grid, state.theta);
  return {
    ...out,
    infiltratedMm: (fluxes.rainCm3 - fluxes.runoffCm3) * 10,
    residualFraction: left / (startCm + fluxes.rainCm3),
    steps: fluxes.subSteps,
  };
}

const stored = (grid: Grid, theta: Float64Array): number =>
  theta.reduce((sum, t, i) => sum + t * grid.thicknessCm[i], 0);

function layerMeans(grid: Grid, theta: Float64Array): number[] {
  return layersCm.slice(1).map((to, k) => {
    let water = 0;
    for (let i = 0; i < grid.layers; i++) {
      water += theta[i] * overlap(grid.layerEdgesCm[i], grid.layerEdgesCm[i + 1], layersCm[k], to);
    }
    return water / (to - layersCm[k]);
  });
}
