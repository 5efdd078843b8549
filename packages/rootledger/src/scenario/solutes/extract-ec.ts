import type { SoluteGrid } from "../../water/solute-grid.js";
import { saltContentOf } from "./line-content.js";

/**
 * EC of the saturation extract of every cell of the water's grid: its salt in the water it holds when saturated (US Salinity Laboratory 1954,
 * Agriculture Handbook 60).
 *
 * @example extractEcInto(salt.eceDsPerM, store.massMg, grid, ground.thetaSaturated)
 */
export function extractEcInto(
  out: Float64Array,
  massMg: Float64Array,
  grid: SoluteGrid,
  thetaSaturated: Float64Array,
): void {
  const { coarse, lanes } = grid;
  sumByCell(out, massMg, grid);
  const perDsPerM = saltContentOf(1);
  for (let c = 0; c < coarse.layers * lanes; c++) out[c] /= thetaSaturated[c] * coarse.volumeCm3[c] * perDsPerM;
}

/** Mass of the slices of each cell, mg. @example sumByCell(out, store.massMg, grid) */
export function sumByCell(out: Float64Array, massMg: Float64Array, { slices, lanes, layerOf }: SoluteGrid): void {
  out.fill(0);
  for (let s = 0; s < slices; s++) {
    const at = layerOf[s] * lanes;
    for (let j = 0; j < lanes; j++) out[at + j] += massMg[s * lanes + j];
  }
}
