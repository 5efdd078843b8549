import { osmoticHeadCm } from "../../tree/osmotic-head.js";
import { saltFactor } from "../../tree/salinity-tolerance.js";
import type { Grid } from "../../water/grid.js";
import type { StressProcess, TreeLimits } from "../../water/stress.js";
import type { Salt } from "../scenario.js";

/** What salt does to uptake in each cell of the water's grid at this moment, of the tree that is being carried. */
export interface SaltInCells {
  /** EC of the saturation extract, dS/m. */
  readonly eceDsPerM: Float64Array;
  /** Factor of the threshold-slope response. */
  readonly factor: Float64Array;
  readonly osmoticHeadCm: Float64Array;
}

/** @example saltInCells(64).factor[0] // 1 */
export const saltInCells = (cells: number): SaltInCells => ({
  eceDsPerM: new Float64Array(cells),
  factor: new Float64Array(cells).fill(1),
  osmoticHeadCm: new Float64Array(cells),
});

/** Works out the factor, or the osmotic head of the soil water, from ECe. @example respondInto(salt, response, theta, saturated) */
export function respondInto(
  salt: SaltInCells,
  response: Salt["response"],
  theta: Float64Array,
  thetaSaturated: Float64Array,
): void {
  const { eceDsPerM, factor, osmoticHeadCm: osmotic } = salt;
  if (response.kind === "threshold-slope") {
    const { thresholdDsPerM } = response;
    for (let c = 0; c < factor.length; c++) {
      factor[c] = eceDsPerM[c] > thresholdDsPerM ? saltFactor(response, eceDsPerM[c]) : 1;
    }
  } else if (response.kind === "osmotic-head") {
    for (let c = 0; c < osmotic.length; c++) {
      osmotic[c] = eceDsPerM[c] > 0 ? osmoticHeadCm((eceDsPerM[c] * thetaSaturated[c]) / theta[c]) : 0;
    }
  }
}

/**
 * The tree's stress with salt. `threshold-slope`: the line of Maas & Hoffman (1977) by each cell's own ECe multiplies the dry
 * factor. `osmotic-head`: the dry limb is read at matric plus osmotic head, as in Feddes et al. (1978) with the total head; with a pull limit
 * set for matric tension alone (20 kPa under avocado) that is severe. Either way other roots may make up for it. The classes stay
 * those of water and air; the severity of a thirsty hour then counts its salt too. Cells of a finer grid take the values
 * of the cell they lie in.
 *
 * @example withSalt(twoLimits(limits), salt, response, limits, grid)
 */
export function withSalt(
  base: StressProcess,
  salt: SaltInCells,
  response: Salt["response"],
  limits: TreeLimits,
  coarse: Grid,
): StressProcess {
  if (response.kind === "none") return base;
  let mapped: Grid = coarse;
  let cellOf: Int32Array = Int32Array.from({ length: coarse.cells }, (_, c) => c);
  return (out, ground, theta, values) => {
    base(out, ground, theta, values);
    if (ground.grid !== mapped) {
      mapped = ground.grid;
      cellOf = cellsWithin(mapped, coarse);
    }
    const { thirst } = out;
    const { factor, osmoticHeadCm: osmotic } = salt;
    if (response.kind === "threshold-slope") {
      for (let f = 0; f < thirst.length; f++) thirst[f] *= factor[cellOf[f]];
      return;
    }
    const { pullLimitHeadCm, zeroUptakeHeadCm } = limits;
    const range = pullLimitHeadCm - zeroUptakeHeadCm;
    for (let f = 0; f < thirst.length; f++) {
      const left = (values.headCm[f] + osmotic[cellOf[f]] - zeroUptakeHeadCm) / range;
      if (left < thirst[f]) thirst[f] = left > 0 ? left : 0;
    }
  };
}

/** The coarse cell in which each fine one lies. */
function cellsWithin(fine: Grid, coarse: Grid): Int32Array {
  const layer = within(fine.layerEdgesCm, coarse.layerEdgesCm);
  const lane = within(fine.laneEdgesCm, coarse.laneEdgesCm);
  return Int32Array.from(
    { length: fine.cells },
    (_, f) => layer[(f / fine.lanes) | 0] * coarse.lanes + lane[f % fine.lanes],
  );
}

const within = (fine: Float64Array, coarse: Float64Array): number[] =>
  Array.from({ length: fine.length - 1 }, (_, i) => {
    const middle = 0.5 * (fine[i] + fine[i + 1]);
    return coarse.findIndex((edge, k) => middle >= edge && middle < coarse[k + 1]);
  });
