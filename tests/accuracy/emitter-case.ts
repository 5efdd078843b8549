import { readFileSync } from "node:fs";
import {
  emptyFluxes,
  fillGround,
  type Grid,
  richardsEngine,
  thetaAtHead,
  trapezoid,
  type WaterEngine,
  type WaterSetup,
} from "rootledger/water";
import { type ReferenceSoil, tableOf } from "./reference-soil.js";
import { lastWet } from "./wetted.js";

export interface EmitterMoment {
  readonly timeH: number;
  readonly radiusSurfaceCm: number;
  readonly radius20Cm: number;
  readonly depthCm: number;
  readonly thetaBoxes: readonly number[];
}

export interface EmitterCase {
  readonly id: string;
  readonly soil: ReferenceSoil;
  readonly flowLPerH: number;
  readonly pulses: number;
  readonly gapH: number;
  readonly volumeL: number;
  readonly initialHeadCm: number;
  readonly pondedRadiusMaxCm: number;
  readonly at: readonly EmitterMoment[];
}

export const emitterCases: readonly EmitterCase[] = JSON.parse(
  readFileSync(new URL("cases/emitters.json", import.meta.url), "utf8"),
).cases;

export interface EmitterOutcome {
  readonly at: readonly EmitterMoment[];
  readonly pondedRadiusMaxCm: number;
  readonly residualFraction: number;
}

const boxLayersCm = [0, 20, 40, 60];
const boxLanesCm = [0, 10, 20, 30, 45, 60];

/** Runs one reference case on our engine. */
export function runEmitter(
  reference: EmitterCase,
  grid: Grid,
  makeEngine: (setup: WaterSetup) => WaterEngine = richardsEngine,
): EmitterOutcome {
  const ground = fillGround(grid, [tableOf(reference.soil)], new Uint8Array(grid.cells));
  const engine = makeEngine({
    ground,
    lines: { edge: Int32Array.of(0), share: Float64Array.of(1) },
    roots: { share: new Float64Array(grid.cells), compensationOnset: 1 },
    innerEdge: "mirror",
    stress: trapezoid({ wetZeroHeadCm: -10, wetFullHeadCm: -25, dryFullHeadCm: -500, dryZeroHeadCm: -8000 }),
  });
  const state = { timeH: 0, theta: thetaAtHead(ground, reference.initialHeadCm) };
  const initial = state.theta.slice();
  const start = stored(grid, initial);
  const fluxes = emptyFluxes(grid);
  const none = new Float64Array(grid.lanes);
  const onH = reference.volumeL / reference.flowLPerH / reference.pulses;
  const valve = Array.from({ length: reference.pulses }, (_, p) => p * (onH + reference.gapH));
  const moments = [...valve, ...valve.map((on) => on + onH), ...reference.at.map((at) => at.timeH)];
  const lastH = reference.at[reference.at.length - 1].timeH;
  for (let h = 1; h < lastH; h++) moments.push(h);
  moments.sort((a, b) => a - b);
  const at: EmitterMoment[] = [];
  for (const untilH of moments) {
    if (untilH > state.timeH + 1e-6) {
      const middle = (state.timeH + untilH) / 2;
      const open = valve.some((on) => middle > on && middle < on + onH);
      engine.advance(
        state,
        {
          emitterCm3PerH: open ? reference.flowLPerH * 1000 : 0,
          rainCm3PerH: none,
          evaporationCm3PerH: none,
          transpirationCm3PerH: 0,
        },
        untilH,
        fluxes,
      );
    }
    if (at.length < reference.at.length && Math.abs(untilH - reference.at[at.length].timeH) < 1e-6) {
      at.push(momentOf(grid, state.theta, initial, untilH));
    }
  }
  let ponded = 0;
  for (let j = 0; j < grid.lanes; j++) if (fluxes.pondedH[j] > 0) ponded = grid.laneEdgesCm[j + 1];
  const left = start + fluxes.emitterCm3 - fluxes.bottomCm3 - fluxes.runoffCm3 - stored(grid, state.theta);
  return { at, pondedRadiusMaxCm: ponded, residualFraction: left / (start + fluxes.emitterCm3) };
}

const stored = (grid: Grid, theta: Float64Array): number => theta.reduce((sum, t, c) => sum + t * grid.volumeCm3[c], 0);

function momentOf(grid: Grid, theta: Float64Array, initial: Float64Array, timeH: number): EmitterMoment {
  const { lanes } = grid;
  const risen = (i: number, j: number): number => theta[i * lanes + j] - initial[i * lanes + j];
  const at20 = grid.layerEdgesCm.indexOf(20);
  const above = grid.thicknessCm[at20 - 1];
  const below = grid.thicknessCm[at20];
  return {
    timeH,
    radiusSurfaceCm: lastWet(grid.laneEdgesCm, (j) => risen(0, j)),
    radius20Cm: lastWet(
      grid.laneEdgesCm,
      (j) => (risen(at20 - 1, j) * below + risen(at20, j) * above) / (above + below),
    ),
    depthCm: lastWet(grid.layerEdgesCm, (i) => risen(i, 0)),
    thetaBoxes: boxLayersCm.slice(1).flatMap((toCm, p) =>
      boxLanesCm.slice(1).map((outCm, q) => {
        let water = 0;
        let volume = 0;
        for (let c = 0; c < grid.cells; c++) {
          const i = Math.floor(c / lanes);
          const j = c % lanes;
          if (!holds(grid.layerEdgesCm, i, boxLayersCm[p], toCm)) continue;
          if (!holds(grid.laneEdgesCm, j, boxLanesCm[q], outCm)) continue;
          water += theta[c] * grid.volumeCm3[c];
          volume += grid.volumeCm3[c];
        }
        return water / volume;
      }),
    ),
  };
}

/** Whether the middle of a cell lies in a box; a middle on the edge of two boxes belongs to the outer one, as in the reference. */
function holds(edgesCm: Float64Array, cell: number, from: number, to: number): boolean {
  const middle = (edgesCm[cell] + edgesCm[cell + 1]) / 2;
  return middle > from + 1e-6 && middle < to - 1e-6;
}
