import { levenbergMarquardt } from "ml-levenberg-marquardt";

/** One thing the fit may move: where it is expected, and how far from there would surprise. */
export interface Unknown {
  readonly name: string;
  readonly expected: number;
  readonly spread: number;
}

export interface Fit {
  readonly values: Readonly<Record<string, number>>;
  /** Sum of squares of residuals in their own units of `sigma`, and of the distances from what was expected. */
  readonly misfit: number;
  readonly evaluations: number;
}

/** The fit stays within this many spreads of what was expected. */
const reachSpreads = 3;

/**
 * Values of the unknowns that bring a model closest to readings, by damped least squares (Levenberg 1944, Marquardt 1963)
 * within bounds. Distances from the expected values count as readings too, one spread as one sigma, so that unknowns of which
 * the readings say nothing stay where they are expected.
 *
 * @param sigma what one reading may miss, in units of the readings
 */
export function boundedFit(
  unknowns: readonly Unknown[],
  readings: readonly number[],
  sigma: number,
  iterations: number,
  model: (values: Readonly<Record<string, number>>) => readonly number[],
): Fit {
  const valuesAt = (z: readonly number[]): Record<string, number> =>
    Object.fromEntries(unknowns.map(({ name, expected, spread }, i) => [name, expected + spread * z[i]]));
  const start = unknowns.map(() => 0);
  const all = [...readings.map((reading) => reading / sigma), ...start];
  let evaluations = 0;
  const found = levenbergMarquardt(
    { x: all.map((_, i) => i), y: all },
    (z: number[]) => {
      evaluations++;
      const ours = model(valuesAt(z));
      return (i: number) => (i < ours.length ? ours[i] / sigma : z[i - ours.length]);
    },
    {
      initialValues: start,
      minValues: start.map(() => -reachSpreads),
      maxValues: start.map(() => reachSpreads),
      gradientDifference: 0.1,
      damping: 1,
      dampingStepUp: 8,
      dampingStepDown: 5,
      maxIterations: iterations,
      errorTolerance: 1e-3,
    },
  );
  return { values: valuesAt(found.parameterValues), misfit: found.parameterError, evaluations };
}
