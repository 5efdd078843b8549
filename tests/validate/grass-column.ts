import { type GardnerCurveParameters, gardnerCurve, tabulateSoil } from "rootledger/ground";
import { rootDepthShare } from "rootledger/tree";
import { bucketEngine, emptyFluxes, fillGround, stripGrid, trapezoid, type WaterState } from "rootledger/water";
import { sunShare } from "rootledger/weather";
import type { StationRecord } from "./station-record.js";

/** The curve of the soil about one probe. */
export type PlotHorizon = GardnerCurveParameters;

/** A level plot of rain-fed grass. */
export interface GrassPlot {
  /** One for each probe, top down. */
  readonly horizons: readonly PlotHorizon[];
  /** Basal crop coefficient by day. */
  readonly kcb: Float64Array;
  readonly coverFraction: number;
  readonly topShare: number;
  readonly dryZeroHeadCm: number;
}

/** A column of the library's bucket engine that can be set to readings and carried over days. */
export interface GrassColumn {
  /** Sets every horizon to the reading of its probe. */
  start(readings: readonly number[]): void;
  /** Carries the column over days [from, to) and writes the mean of each day at each probe. */
  run(out: readonly Float64Array[], from: number, to: number): void;
}

/** Layers with a cell centred on each probe (5, 10, 20, 50, 100 cm), cm. */
const edgesCm = [0, 2.5, 7.5, 12.5, 15, 25, 35, 45, 55, 75, 90, 110, 140];
const cellOfProbe: Readonly<Record<number, number>> = { 5: 1, 10: 2, 20: 4, 50: 7, 100: 10 };
/** Each horizon ends half way to the next probe, cm; the last one at the bottom. */
const horizonEndCm: Readonly<Record<number, number>> = { 5: 7.5, 10: 15, 20: 35, 50: 75, 100: 140 };
/** FAO-56 (Allen et al. 1998) eq. 72 without its climate term. */
const kcMax = 1.2;
/** Grass: full uptake from 10 cm to 500 cm of suction (Feddes, Kowalik & Zaradny 1978 for pasture; from memory). */
const wet = { wetZeroHeadCm: -1, wetFullHeadCm: -10, dryFullHeadCm: -500 };
const rootDepthCm = 100;

/**
 * One lane, no lines, free drainage. Rain falls evenly over its day, for the record does not say when; demand follows the sun.
 */
export function grassColumn(record: StationRecord, plot: GrassPlot): GrassColumn {
  const { depthsCm } = record;
  const grid = stripGrid({ layerEdgesCm: edgesCm, laneEdgesCm: [0, 1], rowLengthCm: 1, sides: 1 });
  const material = Uint8Array.from({ length: grid.cells }, (_, c) => {
    const middle = (edgesCm[c] + edgesCm[c + 1]) / 2;
    const horizon = depthsCm.findIndex((depth) => middle < horizonEndCm[depth]);
    return horizon < 0 ? depthsCm.length - 1 : horizon;
  });
  const tables = plot.horizons.map((h, i) => tabulateSoil(gardnerCurve(h, `horizon ${i + 1}`, "fitted to the probe")));
  const ground = fillGround(grid, tables, material);
  const engine = bucketEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: rootDepthShare(edgesCm, rootDepthCm, plot.topShare), compensationOnset: 1 },
    innerEdge: "mirror",
    stress: trapezoid({ ...wet, dryZeroHeadCm: plot.dryZeroHeadCm }),
  });
  const state: WaterState = { timeH: 0, theta: new Float64Array(grid.cells) };
  const fluxes = emptyFluxes(grid);
  const forcing = {
    emitterCm3PerH: 0,
    rainCm3PerH: new Float64Array(1),
    evaporationCm3PerH: new Float64Array(1),
    transpirationCm3PerH: 0,
  };
  const addMeans = (out: readonly Float64Array[], day: number, weight: number): void => {
    for (let k = 0; k < out.length; k++) out[k][day] += weight * state.theta[cellOfProbe[depthsCm[k]]];
  };

  function day(out: readonly Float64Array[], d: number): void {
    const sunrise = record.sunriseH[d];
    const sunset = record.sunsetH[d];
    const et0Cm = record.et0Mm[d] / 10;
    const byEnergy = kcMax - plot.kcb[d];
    const byGround = (1 - plot.coverFraction) * kcMax;
    state.timeH = d * 24;
    forcing.rainCm3PerH[0] = record.rainMm[d] / 10 / 24;
    for (const column of out) column[d] = 0;
    let fromH = 0;
    for (const toH of [sunrise, (sunrise + 12) / 2, 12, (sunset + 12) / 2, sunset, 24]) {
      const perH = (sunShare(fromH, toH, sunrise, sunset) * et0Cm) / (toH - fromH);
      forcing.transpirationCm3PerH = plot.kcb[d] * perH;
      // FAO-56 eq. 71.
      forcing.evaporationCm3PerH[0] = (byEnergy < byGround ? byEnergy : byGround) * perH;
      addMeans(out, d, (toH - fromH) / 48);
      engine.advance(state, forcing, d * 24 + toH, fluxes);
      addMeans(out, d, (toH - fromH) / 48);
      fromH = toH;
    }
  }

  return {
    start(readings) {
      for (let c = 0; c < grid.cells; c++) {
        const reading = readings[material[c]];
        const driest = ground.thetaResidual[c] + 0.002;
        const wettest = ground.thetaSaturated[c] - 0.002;
        state.theta[c] = reading < driest ? driest : reading > wettest ? wettest : reading;
      }
    },
    run(out, from, to) {
      for (let d = from; d < to; d++) day(out, d);
    },
  };
}
