import type { LeastSquares } from "./least-squares.js";

/** One thing the fit may move: where it is expected, and how far from there would surprise. */
export interface ExpectedUnknown {
  readonly name: string;
  readonly expected: number;
  readonly spread: number;
}

/** Outcome of a fit within bounds. */
export interface BoundedFit {
  readonly values: Readonly<Record<string, number>>;
  /** The same in spreads from what was expected, in the order of the unknowns. */
  readonly spreads: readonly number[];
  /** Sum of squares of residuals in units of `sigma`, and of the distances from what was expected in spreads. */
  readonly misfit: number;
  /** Different values that the model was asked for. */
  readonly evaluations: number;
}

/** The fit stays within this many spreads of what was expected. Our choice, no source. */
export const reachSpreads = 3;

/**
 * Values of the unknowns that bring a model closest to readings, by least squares within bounds. Distances from the expected values
 * count as readings too, one spread as one sigma, so that unknowns of which the readings say nothing stay where they are expected.
 *
 * @param sigma what one reading may miss, in units of the readings
 * @throws RangeError if there is no reading or no unknown, or sigma or a spread is not above 0.
 * @example boundedFit(unknowns, readings, 0.02, { leastSquares, iterations: 12 }, (values) => readings.map((_, i) => values.level)).values
 */
export function boundedFit(
  unknowns: readonly ExpectedUnknown[],
  readings: readonly number[],
  sigma: number,
  how: { readonly leastSquares: LeastSquares; readonly iterations: number },
  model: (values: Readonly<Record<string, number>>) => readonly number[],
): BoundedFit {
  if (readings.length === 0 || unknowns.length === 0 || !(sigma > 0)) {
    throw new RangeError(
      `boundedFit requires readings, unknowns and a sigma above 0: got ${readings.length}, ${unknowns.length}, ${sigma}`,
    );
  }
  const narrow = unknowns.find(({ spread }) => !(spread > 0));
  if (narrow !== undefined)
    throw new RangeError(`boundedFit requires a spread above 0: got ${narrow.spread} of ${narrow.name}`);
  const valuesAt = (z: readonly number[]): Record<string, number> =>
    Object.fromEntries(unknowns.map(({ name, expected, spread }, i) => [name, expected + spread * z[i]]));
  const start = unknowns.map(() => 0);
  const known = new Map<string, readonly number[]>();
  const ofModel = (z: readonly number[]): readonly number[] => {
    const key = z.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const ours = model(valuesAt(z));
    known.set(key, ours);
    return ours;
  };
  const { values: spreads, misfit } = how.leastSquares({
    targets: [...readings.map((reading) => reading / sigma), ...start],
    model: (z) => [...ofModel(z).map((ours) => ours / sigma), ...z],
    start,
    lower: start.map(() => -reachSpreads),
    upper: start.map(() => reachSpreads),
    iterations: how.iterations,
  });
  return { values: valuesAt(spreads), spreads, misfit, evaluations: known.size };
}
