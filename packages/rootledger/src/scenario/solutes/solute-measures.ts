import type { Measure } from "../../water/result.js";
import { extractEcInto } from "./extract-ec.js";
import { rootMean, seasonSums } from "./root-zone-salt.js";
import { massOf, type SoluteStore, soluteBook } from "./solute-account.js";
import type { CarriedSolutes, SolutePlace } from "./solutes-result.js";

const mgPerG = 1000;

/**
 * Measures of salt and nitrogen. ECe is that of the saturation extract: over the season, weighted by roots, and by the water drawn
 * from each cell; the leaching fraction is the water that left the rooted depth downward over all that entered the soil
 * (FAO-29, Ayers & Westcot 1985). Salt held back: root-hours times what the salt factor lacks of 1.
 *
 * @example soluteMeasures(trees, 720, place).map(({ id }) => id)
 */
export function soluteMeasures(trees: readonly CarriedSolutes[], hours: number, place: SolutePlace): Measure[] {
  const perTree = (id: string, unit: string, of: (tree: CarriedSolutes) => number): Measure => ({
    id,
    unit,
    values: Float64Array.from(trees, of),
  });
  const ratio = (a: number, b: number): number => (b > 0 ? a / b : 0);
  const grams = (store: SoluteStore | undefined, place: number): number => (store?.book[place] ?? 0) / mgPerG;
  const left = ({ massMg, surfaceMg }: SoluteStore): number => (massOf(massMg) + massOf(surfaceMg)) / mgPerG;
  const measures: Measure[] = [];
  if (trees.some(({ salt }) => salt !== undefined)) {
    measures.push(
      perTree("root-zone-ece", "dS/m", ({ sums }) => ratio(sums[seasonSums.rootEceH], hours)),
      perTree("root-zone-ece-end", "dS/m", ({ salt }) => (salt === undefined ? 0 : rootEce(salt, place))),
      perTree("uptake-ece", "dS/m", ({ sums }) => ratio(sums[seasonSums.drawnEce], sums[seasonSums.drawnCm3])),
      perTree("salt-with-water", "g", ({ salt }) => grams(salt, soluteBook.withWater)),
      perTree("salt-below-roots", "g", ({ salt }) => grams(salt, soluteBook.belowRoots)),
      perTree("salt-storage-change", "g", ({ salt }) =>
        salt === undefined ? 0 : left(salt) - grams(salt, soluteBook.start),
      ),
      perTree("leaching-fraction", "fraction", ({ sums }) =>
        ratio(sums[seasonSums.belowRootsCm3], sums[seasonSums.enteredCm3]),
      ),
      perTree("salt-held-back", "root-h", ({ sums }) => sums[seasonSums.heldBackH]),
    );
  }
  if (trees.some(({ nitrogen }) => nitrogen !== undefined)) {
    measures.push(
      perTree(
        "nitrogen-given",
        "g",
        ({ nitrogen }) => grams(nitrogen, soluteBook.withWater) + grams(nitrogen, soluteBook.byHand),
      ),
      perTree("nitrogen-taken-up", "g", ({ nitrogen }) => grams(nitrogen, soluteBook.takenUp)),
      perTree("nitrogen-below-roots", "g", ({ nitrogen }) => grams(nitrogen, soluteBook.belowRoots)),
      perTree("nitrogen-rootless-ground", "g", ({ nitrogen }) => grams(nitrogen, soluteBook.rootlessGround)),
      perTree("nitrogen-left", "g", ({ nitrogen }) => (nitrogen === undefined ? 0 : left(nitrogen))),
    );
  }
  return measures;
}

function rootEce({ massMg }: SoluteStore, { grid, thetaSaturated, rootShare }: SolutePlace): number {
  const ece = new Float64Array(grid.coarse.cells);
  extractEcInto(ece, massMg, grid, thetaSaturated);
  return rootMean(ece, rootShare);
}
