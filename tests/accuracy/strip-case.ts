import { readFileSync } from "node:fs";
import { tabulateSoil, vanGenuchtenCurve } from "rootledger/ground";
import {
  bucketEngine,
  emptyFluxes,
  fillGround,
  type Grid,
  laneEdges,
  layerEdges,
  stripGrid,
  thetaAtHead,
  trapezoid,
  type WaterEngine,
  type WaterSetup,
} from "rootledger/water";

interface ReferenceSoil {
  readonly name: string;
  readonly theta_r: number;
  readonly theta_s: number;
  readonly alpha_per_cm: number;
  readonly n: number;
  readonly Ks_cm_per_h: number;
}

/** One reference run: what was done and what the fine-grid solution gave. Litres per metre of line, both sides. */
export interface StripCase {
  readonly id: string;
  readonly soils: readonly ReferenceSoil[];
  readonly interfaceCm: number | null;
  readonly lineFlowLPerHPerM: number;
  readonly schedule: string;
  readonly onH: readonly number[];
  readonly offH: readonly number[];
  readonly week3: Readonly<Record<string, number>> & { readonly theta_bins_mean: readonly number[] };
  readonly drainage60L: number;
  readonly drainage100L: number;
}

export interface StripOutcome {
  readonly uptakeRatio: number;
  readonly drainage60L: number;
  readonly drainage100L: number;
  readonly storageMeanL: number;
  readonly storageMinL: number;
  readonly storageMaxL: number;
  readonly thetaBins: readonly number[];
  readonly halfWidthSurfaceMaxCm: number;
  readonly halfWidth20MaxCm: number;
  readonly wettedDepthMaxCm: number;
  readonly airlessHours: number;
  readonly residualFraction: number;
}

export const stripCases: readonly StripCase[] = JSON.parse(
  readFileSync(new URL("cases/strips.json", import.meta.url), "utf8"),
).cases;

/** The grid that the library itself lays over this layout: 8 layers, 8 lanes. */
export const bucketLayersCm: readonly number[] = layerEdges([60, 100]);
const bucketLanesCm: readonly number[] = laneEdges([0], 150);

const rise = 0.02;
const weekH = 168;
const demandL = 3.4;

/** Runs one reference case on our engine. Three weeks; outputs of week 3, sums of all three. */
export function runStrip(
  reference: StripCase,
  makeEngine: (setup: WaterSetup) => WaterEngine = bucketEngine,
  layers: readonly number[] = bucketLayersCm,
  lanes: readonly number[] = bucketLanesCm,
): StripOutcome {
  const grid = stripGrid({ layerEdgesCm: layers, laneEdgesCm: lanes, rowLengthCm: 100, sides: 2 });
  const tables = reference.soils.map((s) =>
    tabulateSoil(
      vanGenuchtenCurve(
        s.name,
        {
          thetaResidual: s.theta_r,
          thetaSaturated: s.theta_s,
          alphaPerCm: s.alpha_per_cm,
          n: s.n,
          kSatCmPerH: s.Ks_cm_per_h,
        },
        "Carsel & Parrish (1988)",
      ),
    ),
  );
  const material = new Uint8Array(grid.cells);
  if (reference.interfaceCm !== null) {
    for (let c = 0; c < grid.cells; c++)
      if (grid.layerEdgesCm[Math.floor(c / grid.lanes)] >= reference.interfaceCm) material[c] = 1;
  }
  const ground = fillGround(grid, tables, material);
  const share = referenceRoots(grid);
  const engine = makeEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share, compensationOnset: 1 },
    innerEdge: "mirror",
    stress: trapezoid({ wetZeroHeadCm: -10, wetFullHeadCm: -25, dryFullHeadCm: -500, dryZeroHeadCm: -8000 }),
    evaporation: (out) => {
      out.fill(0);
    },
  });
  const state = { timeH: 0, theta: thetaAtHead(ground, -500) };
  const initial = state.theta.slice();
  const start = litres(grid, initial, () => 1);
  const fluxes = emptyFluxes(grid);
  const none = new Float64Array(grid.lanes);
  const at60 = grid.layerEdgesCm.indexOf(60) - 1;
  const inRootBox = (i: number, j: number): number =>
    (overlap(grid.layerEdgesCm[i], grid.layerEdgesCm[i + 1], 0, 60) / grid.thicknessCm[i]) *
    (overlap(grid.laneEdgesCm[j], grid.laneEdgesCm[j + 1], 0, 60) / (grid.laneEdgesCm[j + 1] - grid.laneEdgesCm[j]));
  const storages: number[] = [];
  const bins = new Float64Array(28);
  let binCount = 0;
  let taken = 0;
  let surfaceMax = 0;
  let at20Max = 0;
  let depthMax = 0;
  let airless = 0;
  for (const untilH of momentsOf(reference)) {
    const fromH = state.timeH;
    const middle = ((fromH + untilH) / 2) % weekH;
    const open = reference.onH.some((on, k) => middle > on && middle < reference.offH[k]);
    engine.advance(
      state,
      {
        emitterCm3PerH: open ? reference.lineFlowLPerHPerM * 1000 : 0,
        rainCm3PerH: none,
        evaporationCm3PerH: none,
        transpirationCm3PerH: (demandL * 1000 * sunShare(fromH % 24, (fromH % 24) + untilH - fromH)) / (untilH - fromH),
      },
      untilH,
      fluxes,
    );
    if (untilH === 2 * weekH) taken = fluxes.transpirationCm3;
    if (untilH < 2 * weekH || untilH % 1 !== 0) continue;
    if (untilH % 3 === 0) surfaceMax = Math.max(surfaceMax, halfWidth(grid, state.theta, initial, 0));
    at20Max = Math.max(at20Max, halfWidth(grid, state.theta, initial, 20));
    depthMax = Math.max(depthMax, wettedDepth(grid, state.theta, initial));
    let air = 0;
    for (let c = 0; c < grid.cells; c++) air += share[c] * (ground.thetaSaturated[c] - state.theta[c]);
    if (untilH > 2 * weekH && air < 0.1) airless++;
    if (untilH % 3 !== 0) continue;
    storages.push(litres(grid, state.theta, inRootBox));
    addBins(bins, grid, state.theta);
    binCount++;
  }
  const end = litres(grid, state.theta, () => 1);
  const out = (fluxes.transpirationCm3 + fluxes.bottomCm3 + fluxes.runoffCm3) / 1000;
  return {
    uptakeRatio: (fluxes.transpirationCm3 - taken) / 1000 / (7 * demandL),
    drainage60L: fluxes.downwardCm3[at60] / 1000,
    drainage100L: fluxes.bottomCm3 / 1000,
    storageMeanL: storages.reduce((a, b) => a + b, 0) / storages.length,
    storageMinL: Math.min(...storages),
    storageMaxL: Math.max(...storages),
    thetaBins: Array.from(bins, (sum) => sum / binCount),
    halfWidthSurfaceMaxCm: surfaceMax,
    halfWidth20MaxCm: at20Max,
    wettedDepthMaxCm: depthMax,
    airlessHours: airless,
    residualFraction: (start + fluxes.emitterCm3 / 1000 - out - end) / (start + fluxes.emitterCm3 / 1000),
  };
}

/** Roots of the reference: exp(-0.1020 z) over 100 cm, even within 60 cm of the line. */
function referenceRoots(grid: Grid): Float64Array {
  const share = new Float64Array(grid.cells);
  let total = 0;
  for (let c = 0; c < grid.cells; c++) {
    const i = Math.floor(c / grid.lanes);
    const j = c % grid.lanes;
    const width = Math.max(0, Math.min(60, grid.laneEdgesCm[j + 1]) - grid.laneEdgesCm[j]);
    share[c] = (Math.exp(-0.102 * grid.layerEdgesCm[i]) - Math.exp(-0.102 * grid.layerEdgesCm[i + 1])) * width;
    total += share[c];
  }
  return share.map((s) => s / total);
}

function momentsOf(reference: StripCase): number[] {
  const moments = new Set<number>();
  for (let h = 1; h <= 3 * weekH; h++) moments.add(h);
  for (let week = 0; week < 3; week++) {
    for (const h of [...reference.onH, ...reference.offH]) moments.add(week * weekH + h);
  }
  const sorted = [...moments].sort((a, b) => a - b);
  return sorted.filter((t, k) => k === 0 || t - sorted[k - 1] > 1e-9);
}

/** Half sine from 06:00 to 18:00. */
function sunShare(from: number, to: number): number {
  const clamp = (h: number): number => Math.min(18, Math.max(6, h));
  const phase = (h: number): number => Math.cos((Math.PI * (clamp(h) - 6)) / 12);
  return (phase(from) - phase(to)) / 2;
}

function litres(grid: Grid, theta: Float64Array, part: (layer: number, lane: number) => number): number {
  let sum = 0;
  for (let c = 0; c < grid.cells; c++)
    sum += part(Math.floor(c / grid.lanes), c % grid.lanes) * theta[c] * grid.volumeCm3[c];
  return sum / 1000;
}

/** Outermost place where theta has risen by 0.02, linear between lane centres; depth 0 is the top layer, 20 the mean of the layers around it. */
function halfWidth(grid: Grid, theta: Float64Array, initial: Float64Array, depthCm: number): number {
  const layer = depthCm === 0 ? 0 : grid.layerEdgesCm.indexOf(depthCm);
  const risen = (j: number): number => {
    const c = layer * grid.lanes + j;
    const own = theta[c] - initial[c];
    if (depthCm === 0) return own;
    const above = (layer - 1) * grid.lanes + j;
    const da = grid.thicknessCm[layer - 1] / 2;
    const db = grid.thicknessCm[layer] / 2;
    return ((theta[above] - initial[above]) * db + own * da) / (da + db);
  };
  const centre = (j: number): number => (grid.laneEdgesCm[j] + grid.laneEdgesCm[j + 1]) / 2;
  for (let j = grid.lanes - 1; j >= 0; j--) {
    if (risen(j) <= rise) continue;
    if (j === grid.lanes - 1) return grid.laneEdgesCm[grid.lanes];
    const part = (risen(j) - rise) / (risen(j) - risen(j + 1));
    return centre(j) + part * (centre(j + 1) - centre(j));
  }
  return 0;
}

function wettedDepth(grid: Grid, theta: Float64Array, initial: Float64Array): number {
  const centre = (i: number): number => (grid.layerEdgesCm[i] + grid.layerEdgesCm[i + 1]) / 2;
  let deepest = 0;
  for (let j = 0; j < grid.lanes; j++) {
    const risen = (i: number): number => theta[i * grid.lanes + j] - initial[i * grid.lanes + j];
    for (let i = grid.layers - 1; i >= 0; i--) {
      if (risen(i) <= rise) continue;
      const at =
        i === grid.layers - 1
          ? grid.layerEdgesCm[grid.layers]
          : centre(i) + ((risen(i) - rise) / (risen(i) - risen(i + 1))) * (centre(i + 1) - centre(i));
      deepest = Math.max(deepest, at);
      break;
    }
  }
  return deepest;
}

const binLayersCm = [0, 20, 40, 60, 100];
const binLanesCm = [0, 10, 20, 30, 45, 60, 100, 150];

const overlap = (a: number, b: number, from: number, to: number): number =>
  Math.max(0, Math.min(b, to) - Math.max(a, from));

/** Adds the volume means of 4 x 7 boxes; cells that straddle a box edge count by overlap. */
function addBins(bins: Float64Array, grid: Grid, theta: Float64Array): void {
  for (let p = 0; p < 4; p++) {
    for (let q = 0; q < 7; q++) {
      let water = 0;
      let volume = 0;
      for (let c = 0; c < grid.cells; c++) {
        const i = Math.floor(c / grid.lanes);
        const j = c % grid.lanes;
        const dz = overlap(grid.layerEdgesCm[i], grid.layerEdgesCm[i + 1], binLayersCm[p], binLayersCm[p + 1]);
        const dx = overlap(grid.laneEdgesCm[j], grid.laneEdgesCm[j + 1], binLanesCm[q], binLanesCm[q + 1]);
        water += theta[c] * dz * dx;
        volume += dz * dx;
      }
      bins[p * 7 + q] += water / volume;
    }
  }
}
