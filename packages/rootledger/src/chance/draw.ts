import { chanceStream } from "../numeric/chance-stream.js";
import { normalShare } from "../numeric/normal-share.js";
import { choleskyFactor } from "../numeric/small-matrix.js";
import { quantileOf, requireDistribution } from "./distribution.js";
import type { Priors, UnknownId } from "./prior.js";

/** One member's values, in the order of `ids`. */
export interface Draw {
  readonly member: number;
  readonly ids: readonly UnknownId[];
  readonly values: Float64Array;
}

/** Where members get their values: from priors and a seed, or from the user's own table, row by row. */
export type DrawSource =
  | { readonly kind: "priors"; readonly priors: Priors; readonly seed: string | number }
  | { readonly kind: "own"; readonly ids: readonly UnknownId[]; readonly values: Float64Array };

/** Names of the unknowns of a source. @example drawIds({ kind: "own", ids: ["kcb"], values: Float64Array.of(1) }) // ["kcb"] */
export const drawIds = (source: DrawSource): readonly UnknownId[] =>
  source.kind === "own" ? source.ids : source.priors.unknowns.map(({ id }) => id);

/**
 * Makes the function that gives a member its draw. With priors, each unknown has its own stream `seed:member:id`, so that a
 * member's draw depends on the seed and its number alone, and another unknown beside it changes nothing. Correlated ranks by
 * the Gaussian copula (Nelsen 2006, An Introduction to Copulas, section 2.3): normals times the Cholesky factor of the
 * correlations, back to shares, then through the inverse of each distribution.
 *
 * @throws RangeError if an unknown comes twice, a distribution has no draws, correlations name an absent unknown or fit no
 * joint distribution, or a table of own draws has no whole number of rows; the returned function, for a member without a row.
 * @example drawMaker({ kind: "own", ids: ["kcb"], values: Float64Array.of(0.9, 1.1) })(1).values[0] // 1.1
 */
export function drawMaker(source: DrawSource): (member: number) => Draw {
  const ids = drawIds(source);
  const twice = ids.find((id, i) => ids.indexOf(id) < i);
  if (twice !== undefined) throw new RangeError(`drawMaker requires each unknown once: got ${twice} twice`);
  return source.kind === "own" ? ownDraws(source) : priorDraws(source.priors, source.seed);
}

function ownDraws({ ids, values }: Extract<DrawSource, { kind: "own" }>): (member: number) => Draw {
  const rows = values.length / ids.length;
  if (ids.length === 0 || !Number.isInteger(rows)) {
    throw new RangeError(`drawMaker requires whole rows of ${ids.length} own draws: got ${values.length} values`);
  }
  return (member) => {
    if (!(Number.isInteger(member) && member >= 0 && member < rows)) {
      throw new RangeError(`drawMaker requires a member below ${rows}, the rows given: got ${member}`);
    }
    return { member, ids, values: values.slice(member * ids.length, (member + 1) * ids.length) };
  };
}

function priorDraws({ unknowns, correlations }: Priors, seed: string | number): (member: number) => Draw {
  const ids = unknowns.map(({ id }) => id);
  for (const { id, spread } of unknowns) requireDistribution(id, spread);
  const lower = choleskyFactor(correlationMatrix(ids, correlations));
  if (lower === undefined) {
    throw new RangeError(`drawMaker requires correlations that can hold together: got ${JSON.stringify(correlations)}`);
  }
  return (member) => {
    const normals = ids.map((id) => chanceStream(seed, member, id).normal());
    const values = Float64Array.from(unknowns, ({ spread }, i) => {
      let z = 0;
      for (let k = 0; k <= i; k++) z += lower[i][k] * normals[k];
      return quantileOf(spread, normalShare(z));
    });
    return { member, ids, values };
  };
}

function correlationMatrix(ids: readonly UnknownId[], correlations: Priors["correlations"]): number[][] {
  const matrix: number[][] = ids.map((_, i) => ids.map((__, j) => (i === j ? 1 : 0)));
  for (const { a, b, r } of correlations) {
    const i = ids.indexOf(a);
    const j = ids.indexOf(b);
    if (i < 0 || j < 0 || i === j) {
      throw new RangeError(`drawMaker requires correlations between two of its unknowns: got ${a} and ${b}`);
    }
    if (!(Math.abs(r) < 1)) throw new RangeError(`drawMaker requires correlations between -1 and 1: got ${r}`);
    matrix[i][j] = r;
    matrix[j][i] = r;
  }
  return matrix;
}

/** A draw by the names of its unknowns, for a report. @example drawRecord({ member: 0, ids: ["kcb"], values: Float64Array.of(1) }) // { kcb: 1 } */
export const drawRecord = ({ ids, values }: Draw): Readonly<Record<string, number>> =>
  Object.fromEntries(ids.map((id, i) => [id, values[i]]));
