import type { SoluteLedger } from "../../water/result.js";
import { massOf, type SoluteStore, soluteBook } from "./solute-account.js";

const mgPerG = 1000;

/** The ledger of one solute, g per tree. @example soluteLedger(stores).residualFraction[0] // below 1e-9 */
export function soluteLedger(stores: readonly SoluteStore[]): SoluteLedger {
  const grams = (of: (store: SoluteStore) => number): Float64Array =>
    Float64Array.from(stores, (store) => of(store) / mgPerG);
  const booked = (place: number): Float64Array => grams(({ book }) => book[place]);
  const startG = booked(soluteBook.start);
  const withWaterG = booked(soluteBook.withWater);
  const byHandG = booked(soluteBook.byHand);
  const takenUpG = booked(soluteBook.takenUp);
  const bottomG = booked(soluteBook.bottom);
  const runoffG = booked(soluteBook.runoff);
  const endG = grams(({ massMg }) => massOf(massMg));
  const onGroundG = grams(({ surfaceMg }) => massOf(surfaceMg));
  const cameIn = startG.map((start, t) => start + withWaterG[t] + byHandG[t]);
  const residualG = cameIn.map((came, t) => came - takenUpG[t] - bottomG[t] - runoffG[t] - endG[t] - onGroundG[t]);
  return {
    startG,
    withWaterG,
    byHandG,
    takenUpG,
    bottomG,
    runoffG,
    endG,
    onGroundG,
    residualG,
    residualFraction: residualG.map((residual, t) => (cameIn[t] > 0 ? residual / cameIn[t] : 0)),
  };
}
