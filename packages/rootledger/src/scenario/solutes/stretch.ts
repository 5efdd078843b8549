import { clearFaces, faceSums } from "../../water/engine.js";
import type { Grid } from "../../water/grid.js";
import type { WaterMove } from "../../water/solute-flows.js";
import type { TreeRun } from "../tree-run.js";
import type { SurfaceWater } from "./surface-water.js";

/** What the water of the tree in hand did in one stretch, laid open for what is dissolved in it. */
export interface Stretch {
  readonly move: WaterMove;
  readonly surface: SurfaceWater;
  readonly begin: (tree: TreeRun) => void;
  readonly end: (tree: TreeRun, hours: number) => void;
}

/** One record for all trees, which are carried in turn. @example stretchRecord(grid).move.hours // 0 */
export function stretchRecord(grid: Grid): Stretch {
  const { cells, lanes } = grid;
  const faces = faceSums(grid);
  const thetaBefore = new Float64Array(cells);
  const uptakeBefore = new Float64Array(cells);
  const uptakeCm3 = new Float64Array(cells);
  const rainCm3 = new Float64Array(lanes);
  const move: { -readonly [K in keyof WaterMove]: WaterMove[K] } = {
    hours: 0,
    thetaBefore,
    thetaAfter: thetaBefore,
    faces,
    uptakeCm3,
  };
  const surface = { faces, emittedCm3: 0, rainCm3, runoffCm3: 0 };
  let runoffBefore = 0;
  return {
    move,
    surface,
    begin({ state, fluxes }) {
      thetaBefore.set(state.theta);
      uptakeBefore.set(fluxes.uptakeCm3);
      runoffBefore = fluxes.runoffCm3;
      clearFaces(faces);
      fluxes.faces = faces;
    },
    end({ state, fluxes, forcing }, hours) {
      move.hours = hours;
      move.thetaAfter = state.theta;
      for (let c = 0; c < cells; c++) uptakeCm3[c] = fluxes.uptakeCm3[c] - uptakeBefore[c];
      for (let j = 0; j < lanes; j++) rainCm3[j] = forcing.rainCm3PerH[j] * hours;
      surface.emittedCm3 = forcing.emitterCm3PerH * hours;
      surface.runoffCm3 = fluxes.runoffCm3 - runoffBefore;
    },
  };
}
