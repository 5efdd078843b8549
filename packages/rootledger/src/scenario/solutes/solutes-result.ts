import type { SolutesResult, Table } from "../../water/result.js";
import type { SoluteGrid } from "../../water/solute-grid.js";
import { extractEcInto, sumByCell } from "./extract-ec.js";
import type { SoluteStore } from "./solute-account.js";
import { soluteLedger } from "./solute-books.js";

const mgPerLPerMgPerCm3 = 1000;

/** What is dissolved in the ground of one tree. */
export interface CarriedSolutes {
  readonly salt: SoluteStore | undefined;
  readonly nitrogen: SoluteStore | undefined;
  readonly sums: Float64Array;
}

/** Where it is dissolved. */
export interface SolutePlace {
  readonly grid: SoluteGrid;
  readonly thetaSaturated: Float64Array;
  readonly rootShare: Float64Array;
}

/** @param theta of each tree at this moment @example solutesResult(trees, days.table, thetas, place).salt?.endG */
export function solutesResult(
  trees: readonly CarriedSolutes[],
  days: Table,
  theta: readonly Float64Array[],
  { grid, thetaSaturated }: SolutePlace,
): SolutesResult {
  const { cells, volumeCm3 } = grid.coarse;
  const salts = trees.flatMap(({ salt }) => salt ?? []);
  const nitrogens = trees.flatMap(({ nitrogen }) => nitrogen ?? []);
  const byCell = (stores: readonly SoluteStore[], fill: (out: Float64Array, store: SoluteStore, t: number) => void) => {
    const out = new Float64Array(cells * stores.length);
    const one = new Float64Array(cells);
    stores.forEach((store, t) => {
      fill(one, store, t);
      for (let c = 0; c < cells; c++) out[c * stores.length + t] = one[c];
    });
    return out;
  };
  const nitrateInto = (out: Float64Array, { massMg }: SoluteStore, t: number): void => {
    sumByCell(out, massMg, grid);
    for (let c = 0; c < cells; c++) out[c] *= mgPerLPerMgPerCm3 / (theta[t][c] * volumeCm3[c]);
  };
  return {
    days,
    ...(salts.length === 0
      ? {}
      : {
          salt: soluteLedger(salts),
          cellEceDsPerM: byCell(salts, (out, { massMg }) => extractEcInto(out, massMg, grid, thetaSaturated)),
        }),
    ...(nitrogens.length === 0
      ? {}
      : { nitrogen: soluteLedger(nitrogens), cellNitrateMgPerL: byCell(nitrogens, nitrateInto) }),
  };
}
