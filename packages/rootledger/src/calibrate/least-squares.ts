/** A least-squares problem in numbers without unit, each within its bounds. */
export interface LeastSquaresProblem {
  /** What the model should come close to. */
  readonly targets: readonly number[];
  /** The model at some values of the unknowns, in the order of the targets. */
  readonly model: (values: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly iterations: number;
}

/** An optimiser: values within their bounds that bring the model close to the targets in the sum of squares. */
export type LeastSquares = (problem: LeastSquaresProblem) => {
  readonly values: readonly number[];
  readonly misfit: number;
};

/** The shape of `levenbergMarquardt` of the package ml-levenberg-marquardt 5, as far as it is used here. */
export type LevenbergMarquardt = (
  data: { readonly x: number[]; readonly y: number[] },
  modelAt: (values: number[]) => (place: number) => number,
  options: {
    initialValues: number[];
    minValues: number[];
    maxValues: number[];
    gradientDifference: number;
    damping: number;
    dampingStepUp: number;
    dampingStepDown: number;
    maxIterations: number;
    errorTolerance: number;
  },
) => { readonly parameterValues: number[]; readonly parameterError: number };

/**
 * Damped least squares (Levenberg 1944, Quart. Appl. Math. 2:164-168; Marquardt 1963, J. SIAM 11:431-441) by the package's function,
 * which is passed in so that the library depends on no optimiser. Differences of 0.1, which for unknowns in spreads is a tenth of a
 * spread: runs of a water balance have small kinks. Damping 1, times 8 up, over 5 down: our choice, from tries.
 *
 * @example dampedLeastSquares(levenbergMarquardt)(problem).values
 */
export const dampedLeastSquares =
  (levenbergMarquardt: LevenbergMarquardt): LeastSquares =>
  ({ targets, model, start, lower, upper, iterations }) => {
    const found = levenbergMarquardt(
      { x: targets.map((_, i) => i), y: [...targets] },
      (values) => {
        const ours = model(values);
        return (i) => ours[i];
      },
      {
        initialValues: [...start],
        minValues: [...lower],
        maxValues: [...upper],
        gradientDifference: 0.1,
        damping: 1,
        dampingStepUp: 8,
        dampingStepDown: 5,
        maxIterations: iterations,
        errorTolerance: 1e-3,
      },
    );
    return { values: found.parameterValues, misfit: found.parameterError };
  };
