import {
  clearFaces,
  clearFluxes,
  emptyFluxes,
  type FaceSums,
  type Forcing,
  faceSums,
  type WaterFluxes,
  type WaterState,
} from "./engine.js";
import type { Grid } from "./grid.js";
import { fillGround, type Ground } from "./ground.js";
import { type RichardsEngine, richardsEngine } from "./richards.js";
import { type Fineness, horizonsOf, richardsGrid } from "./richards-grid.js";
import type { RichardsSetup } from "./richards-setup.js";
import type { RootZone } from "./uptake.js";

/** A setup on coarse cells, and how to make it fine. Its top edge is always `offered`. */
export interface RefinedSetup extends Omit<RichardsSetup, "evaporation" | "top"> {
  readonly fineness?: Fineness;
  /** Share of the roots by fine cell; default each coarse cell's share spread evenly over its volume. */
  readonly rootShare?: (fine: Grid) => Float64Array;
}

export interface RefinedEngine extends RichardsEngine {
  readonly fineGround: Ground;
}

/**
 * Richards' equation on finer cells behind the coarse cells of the setup: state and sums are those of the coarse cells, so
 * the result has the same shape as the bucket's. Theta is the volume mean, water flows are sums, hours of a cell are means
 * weighted by roots (by volume where a cell has none), hours of a lane by area. The fine state lives in `state.fine` and
 * starts from theta spread evenly.
 *
 * @example refinedRichardsEngine(setup).advance(state, forcing, 1, fluxes)
 */
export function refinedRichardsEngine(setup: RefinedSetup): RefinedEngine {
  const { ground, lines, roots } = setup;
  const coarse = ground.grid;
  const lineCm = Array.from(lines.edge, (edge) => coarse.laneEdgesCm[edge]);
  const fine = richardsGrid(coarse, { lineCm, horizonCm: horizonsOf(coarse, ground.material) }, setup.fineness);
  const layerOf = positions(fine.layerEdgesCm, coarse.layerEdgesCm);
  const laneOf = positions(fine.laneEdgesCm, coarse.laneEdgesCm);
  const cellOf = new Int32Array(fine.cells);
  for (let f = 0; f < fine.cells; f++) {
    cellOf[f] = layerOf[(f / fine.lanes) | 0] * coarse.lanes + laneOf[f % fine.lanes];
  }
  const material = Uint8Array.from(cellOf, (c) => ground.material[c]);
  const fineGround = fillGround(fine, ground.tables, material);
  const ownShare = setup.rootShare?.(fine);
  const share = ownShare ?? spreadRoots(roots, coarse, fine, cellOf);
  const weight = hourWeights(share, coarse, fine, cellOf);
  const { evaporationOn } = setup;
  const engine = richardsEngine({
    ...setup,
    ground: fineGround,
    lines: {
      edge: Int32Array.from(lineCm, (at) => fine.laneEdgesCm.findIndex((edge) => Math.abs(edge - at) < 1e-6)),
      share: lines.share,
    },
    roots: { share, compensationOnset: roots.compensationOnset },
    ...(evaporationOn === undefined ? {} : { evaporation: evaporationOn(fineGround) }),
  });
  const fineFluxes = emptyFluxes(fine);
  const fineForcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: new Float64Array(fine.lanes),
    evaporationCm3PerH: new Float64Array(fine.lanes),
    transpirationCm3PerH: 0,
  };

  function advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void {
    state.fine ??= { timeH: state.timeH, theta: Float64Array.from(cellOf, (c) => state.theta[c]) };
    fineForcing.emitterCm3PerH = forcing.emitterCm3PerH;
    fineForcing.transpirationCm3PerH = forcing.transpirationCm3PerH;
    for (let j = 0; j < fine.lanes; j++) {
      const part = fine.laneAreaCm2[j] / coarse.laneAreaCm2[laneOf[j]];
      fineForcing.rainCm3PerH[j] = forcing.rainCm3PerH[laneOf[j]] * part;
      fineForcing.evaporationCm3PerH[j] = forcing.evaporationCm3PerH[laneOf[j]] * part;
    }
    // Roots may grow from day to day.
    if (ownShare === undefined) share.set(spreadRoots(roots, coarse, fine, cellOf));
    clearFluxes(fineFluxes);
    if (fluxes.faces === undefined) delete fineFluxes.faces;
    else if (fineFluxes.faces === undefined) fineFluxes.faces = faceSums(fine);
    else clearFaces(fineFluxes.faces);
    engine.advance(state.fine, fineForcing, untilH, fineFluxes);
    state.timeH = state.fine.timeH;
    gather(state, state.fine.theta);
    addUp(fluxes);
  }

  function gather(state: WaterState, fineTheta: Float64Array): void {
    state.theta.fill(0);
    for (let f = 0; f < fine.cells; f++) state.theta[cellOf[f]] += fineTheta[f] * fine.volumeCm3[f];
    for (let c = 0; c < coarse.cells; c++) state.theta[c] /= coarse.volumeCm3[c];
  }

  function addUp(fluxes: WaterFluxes): void {
    fluxes.emitterCm3 += fineFluxes.emitterCm3;
    fluxes.rainCm3 += fineFluxes.rainCm3;
    fluxes.evaporationCm3 += fineFluxes.evaporationCm3;
    fluxes.transpirationCm3 += fineFluxes.transpirationCm3;
    fluxes.runoffCm3 += fineFluxes.runoffCm3;
    fluxes.bottomCm3 += fineFluxes.bottomCm3;
    fluxes.subSteps += fineFluxes.subSteps;
    for (let i = 0; i < fine.layers; i++) {
      if (i + 1 === fine.layers || layerOf[i + 1] !== layerOf[i]) {
        fluxes.downwardCm3[layerOf[i]] += fineFluxes.downwardCm3[i];
      }
    }
    for (let f = 0; f < fine.cells; f++) {
      const c = cellOf[f];
      fluxes.uptakeCm3[c] += fineFluxes.uptakeCm3[f];
      fluxes.airlessH[c] += weight[f] * fineFluxes.airlessH[f];
      fluxes.thirstyH[c] += weight[f] * fineFluxes.thirstyH[f];
      fluxes.airlessSeverityH[c] += weight[f] * fineFluxes.airlessSeverityH[f];
      fluxes.thirstySeverityH[c] += weight[f] * fineFluxes.thirstySeverityH[f];
    }
    for (let j = 0; j < fine.lanes; j++) {
      const part = fine.laneAreaCm2[j] / coarse.laneAreaCm2[laneOf[j]];
      fluxes.pondedH[laneOf[j]] += part * fineFluxes.pondedH[j];
    }
    if (fluxes.faces !== undefined && fineFluxes.faces !== undefined) addFaces(fluxes.faces, fineFluxes.faces);
  }

  /** A coarse face is the sum of the fine ones that lie on it. */
  function addFaces(sums: FaceSums, fineSums: FaceSums): void {
    for (let f = 0; f < fine.cells; f++) {
      const c = cellOf[f];
      if (f + fine.lanes >= fine.cells || cellOf[f + fine.lanes] !== c) sums.downCm3[c] += fineSums.downCm3[f];
      if ((f + 1) % fine.lanes === 0 || cellOf[f + 1] !== c) sums.sideCm3[c] += fineSums.sideCm3[f];
    }
    for (let j = 0; j < fine.lanes; j++) {
      sums.intakeCm3[laneOf[j]] += fineSums.intakeCm3[j];
      sums.evaporationCm3[laneOf[j]] += fineSums.evaporationCm3[j];
    }
  }

  return { name: "richards", work: engine.work, fineGround, advance };
}

/** Index of the coarse interval in which each fine one lies. */
function positions(fineEdges: Float64Array, coarseEdges: Float64Array): Int32Array {
  const out = new Int32Array(fineEdges.length - 1);
  let at = 0;
  for (let f = 0; f < out.length; f++) {
    while (0.5 * (fineEdges[f] + fineEdges[f + 1]) > coarseEdges[at + 1]) at++;
    out[f] = at;
  }
  return out;
}

function spreadRoots(roots: RootZone, coarse: Grid, fine: Grid, cellOf: Int32Array): Float64Array {
  return Float64Array.from(cellOf, (c, f) => (roots.share[c] * fine.volumeCm3[f]) / coarse.volumeCm3[c]);
}

/** Weight of each fine cell's hours in its coarse cell: its part of the roots there, or of the volume if there are none. */
function hourWeights(share: Float64Array, coarse: Grid, fine: Grid, cellOf: Int32Array): Float64Array {
  const rooted = new Float64Array(coarse.cells);
  for (let f = 0; f < fine.cells; f++) rooted[cellOf[f]] += share[f];
  return Float64Array.from(cellOf, (c, f) =>
    rooted[c] > 0 ? share[f] / rooted[c] : fine.volumeCm3[f] / coarse.volumeCm3[c],
  );
}
