import { type DrainLayer, drainCovered } from "../ground/covered-drain.js";
import { headFromTension } from "../units.js";
import { type Ground, thetaAtHead } from "../water/ground.js";

/** Theta by cell between which a soil lends water in the sense of FAO-56. */
export interface AvailableCells {
  readonly atFieldCapacity: Float64Array;
  readonly atWiltingPoint: Float64Array;
}

/** FAO-56 (Allen et al. 1998) ch. 8: wilting point at 1500 kPa. */
const wiltingKPa = 1500;
const drainHours = 48;
const cellCm = 2.5;

/**
 * Field capacity as a result, cell by cell: the profile soaked, covered and left to drain for 48 h, without lines or roots;
 * below its lower end the ground drains freely. Boundaries of horizons are met in steps of 2.5 cm.
 *
 * @throws RangeError as `drainCovered`.
 * @example availableCells(ground).atFieldCapacity.length // ground.grid.cells
 */
export function availableCells(ground: Ground): AvailableCells {
  const { grid, material, tables } = ground;
  const { layers, lanes, layerEdgesCm } = grid;
  const column: DrainLayer[] = [];
  let filledCm = 0;
  for (let i = 0; i < layers; i++) {
    const toCm = Math.round(layerEdgesCm[i + 1] / cellCm) * cellCm;
    if (toCm <= filledCm) continue;
    column.push({ curve: tables[material[i * lanes]].curve, thicknessCm: toCm - filledCm });
    filledCm = toCm;
  }
  const { headCm } = drainCovered(column, { hours: drainHours, cellCm });
  const atFieldCapacity = new Float64Array(grid.cells);
  for (let c = 0; c < grid.cells; c++) {
    const layer = (c / lanes) | 0;
    const middleCm = (layerEdgesCm[layer] + layerEdgesCm[layer + 1]) / 2;
    const cell = Math.min(headCm.length - 1, Math.floor(middleCm / cellCm));
    atFieldCapacity[c] = tables[material[c]].curve.thetaAt(headCm[cell]);
  }
  return { atFieldCapacity, atWiltingPoint: thetaAtHead(ground, headFromTension(wiltingKPa)) };
}
