import type { SoilTable } from "../ground/table.js";
import type { Grid } from "./grid.js";

/**
 * The grid filled with soil: which material each cell is made of, and the tables laid end to end so that one lookup
 * serves them all. `lookup` holds K (cm/h), head (cm) and matric flux potential (cm2/h) side by side for each table point.
 */
export interface Ground {
  readonly grid: Grid;
  readonly tables: readonly SoilTable[];
  readonly material: Uint8Array;
  readonly lookup: Float64Array;
  /** First index of each cell's table in `lookup`. */
  readonly tableStart: Int32Array;
  readonly intervals: number;
  readonly thetaResidual: Float64Array;
  readonly thetaSaturated: Float64Array;
  /** Table points per unit of theta, by cell. */
  readonly pointsPerTheta: Float64Array;
  readonly kSatCmPerH: Float64Array;
}

/** Values by cell at one moment, all belonging to the same theta. */
export interface CellValues {
  readonly conductivityCmPerH: Float64Array;
  readonly conductivitySlopeCmPerH: Float64Array;
  readonly headCm: Float64Array;
  readonly matricFluxCm2PerH: Float64Array;
}

/**
 * Fills the grid with soil.
 *
 * @param material table number of each cell (index into `tables`)
 * @throws RangeError if a cell names no table or the tables differ in length.
 * @example fillGround(grid, [tabulateSoil(curve)], new Uint8Array(grid.cells)).thetaSaturated.length // grid.cells
 */
export function fillGround(grid: Grid, tables: readonly SoilTable[], material: Uint8Array): Ground {
  if (material.length !== grid.cells) {
    throw new RangeError(`fillGround requires one material per cell: got ${material.length} for ${grid.cells} cells`);
  }
  const intervals = tables[0]?.intervals ?? 0;
  const stride = (intervals + 1) * 3;
  const lookup = new Float64Array(stride * tables.length);
  tables.forEach((table, t) => {
    if (table.intervals !== intervals) {
      throw new RangeError(`fillGround requires tables of one length: got ${table.intervals} and ${intervals}`);
    }
    for (let k = 0; k <= intervals; k++) {
      const at = t * stride + k * 3;
      lookup[at] = table.conductivityCmPerH[k];
      lookup[at + 1] = table.headCm[k];
      lookup[at + 2] = table.matricFluxCm2PerH[k];
    }
  });
  const tableStart = new Int32Array(grid.cells);
  const thetaResidual = new Float64Array(grid.cells);
  const thetaSaturated = new Float64Array(grid.cells);
  const pointsPerTheta = new Float64Array(grid.cells);
  const kSatCmPerH = new Float64Array(grid.cells);
  for (let c = 0; c < grid.cells; c++) {
    const table = tables[material[c]];
    if (!table) throw new RangeError(`fillGround requires a table for material ${material[c]} of cell ${c}: got none`);
    tableStart[c] = material[c] * stride;
    thetaResidual[c] = table.thetaResidual;
    thetaSaturated[c] = table.thetaSaturated;
    pointsPerTheta[c] = intervals / (table.thetaSaturated - table.thetaResidual);
    kSatCmPerH[c] = table.kSatCmPerH;
  }
  return {
    grid,
    tables,
    material,
    lookup,
    tableStart,
    intervals,
    thetaResidual,
    thetaSaturated,
    pointsPerTheta,
    kSatCmPerH,
  };
}

/** Room for one set of cell values. @example cellValues(64).headCm.length // 64 */
export function cellValues(cells: number): CellValues {
  return {
    conductivityCmPerH: new Float64Array(cells),
    conductivitySlopeCmPerH: new Float64Array(cells),
    headCm: new Float64Array(cells),
    matricFluxCm2PerH: new Float64Array(cells),
  };
}

/** Looks up K, dK/dtheta, head and matric flux potential of every cell, linear between table points. @example lookUpInto(values, ground, theta) */
export function lookUpInto(values: CellValues, ground: Ground, theta: Float64Array): void {
  const { lookup, tableStart, intervals, thetaResidual, pointsPerTheta } = ground;
  const { conductivityCmPerH, conductivitySlopeCmPerH, headCm, matricFluxCm2PerH } = values;
  const cells = ground.grid.cells;
  for (let c = 0; c < cells; c++) {
    const point = (theta[c] - thetaResidual[c]) * pointsPerTheta[c];
    let k = point | 0;
    if (k > intervals - 1) k = intervals - 1;
    if (k < 0) k = 0;
    const part = point - k;
    const at = tableStart[c] + k * 3;
    const rise = lookup[at + 3] - lookup[at];
    conductivityCmPerH[c] = lookup[at] + part * rise;
    conductivitySlopeCmPerH[c] = rise * pointsPerTheta[c];
    headCm[c] = lookup[at + 1] + part * (lookup[at + 4] - lookup[at + 1]);
    matricFluxCm2PerH[c] = lookup[at + 2] + part * (lookup[at + 5] - lookup[at + 2]);
  }
}

/** Theta of every cell at one head, cm. @example thetaAtHead(ground, -102) */
export function thetaAtHead(ground: Ground, headCm: number): Float64Array {
  const theta = new Float64Array(ground.grid.cells);
  for (let c = 0; c < theta.length; c++) theta[c] = ground.tables[ground.material[c]].curve.thetaAt(headCm);
  return theta;
}
