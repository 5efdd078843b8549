import type { SoluteGrid } from "../../water/solute-grid.js";
import type { Prepared } from "../ground-of.js";
import type { Salt, SoilNitrogen } from "../scenario.js";
import { saltContentOf } from "./line-content.js";
import { massOf, type SoluteStore, soluteBook, soluteStore } from "./solute-account.js";

/** kg/ha in mg/cm2. */
const mgPerCm2PerKgPerHa = 1e-2;

/** Salt at the start: the same ECe in the whole profile. @example saltAtStart(salt, grid, thetaSaturated).massMg */
export function saltAtStart(salt: Salt, grid: SoluteGrid, thetaSaturated: Float64Array): SoluteStore {
  const { lanes, layerOf, volumeCm3 } = grid;
  const store = soluteStore(grid.cells, lanes);
  const atSaturation = saltContentOf(salt.startEceDsPerM);
  for (let f = 0; f < grid.cells; f++) {
    store.massMg[f] = atSaturation * thetaSaturated[layerOf[(f / lanes) | 0] * lanes + (f % lanes)] * volumeCm3[f];
  }
  store.book[soluteBook.start] = massOf(store.massMg);
  return store;
}

/** Nitrate at the start: even over the rooted depth, none below it. @example nitrateAtStart(nitrogen, grid, prepared).massMg */
export function nitrateAtStart(
  nitrogen: SoilNitrogen | undefined,
  grid: SoluteGrid,
  { rootedLayers, groundCm2 }: Prepared,
): SoluteStore {
  const { lanes, layerOf, volumeCm3 } = grid;
  const store = soluteStore(grid.cells, lanes);
  const isRooted = (f: number): boolean => layerOf[(f / lanes) | 0] < rootedLayers;
  const rootedCm3 = volumeCm3.reduce((sum, cm3, f) => (isRooted(f) ? sum + cm3 : sum), 0);
  const mg = (nitrogen?.startKgPerHa ?? 0) * mgPerCm2PerKgPerHa * groundCm2;
  for (let f = 0; f < grid.cells; f++) if (isRooted(f)) store.massMg[f] = (mg * volumeCm3[f]) / rootedCm3;
  store.book[soluteBook.start] = massOf(store.massMg);
  return store;
}
