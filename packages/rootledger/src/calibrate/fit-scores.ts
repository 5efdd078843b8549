/** How a model stands to readings, in the unit of the readings where there is one. */
export interface FitScores {
  /** Readings held against the model. */
  readonly count: number;
  /** Root of the mean square of model less reading. */
  readonly rmse: number;
  /** Mean of model less reading. */
  readonly bias: number;
  /** Nash-Sutcliffe efficiency: 1 is perfect, 0 no better than the mean of the readings. NaN where all readings are equal. */
  readonly nse: number;
  /** Kling-Gupta efficiency: 1 is perfect. NaN where all readings or all model values are equal, or readings have a mean of 0. */
  readonly kge: number;
}

/**
 * Scores of a model on readings. nse = 1 - sum (m - r)^2 / sum (r - mean r)^2 (Nash & Sutcliffe 1970, J. Hydrology 10:282-290, eq. 3).
 * kge = 1 - sqrt((c - 1)^2 + (a - 1)^2 + (b - 1)^2), c the correlation, a the ratio of standard deviations and b of means, model over
 * readings (Gupta et al. 2009, J. Hydrology 377:80-91, eqs 9 and 10). A reading of NaN is one that is missing and is left out.
 *
 * @throws RangeError if the lengths differ, no reading is left, or the model is not finite where there is a reading.
 * @example fitScores([1, 2, 3], [2, 4, 6]) // { count: 3, rmse: 2.16, bias: 2, nse: -6, kge: -0.414 }
 */
export function fitScores(readings: ArrayLike<number>, model: ArrayLike<number>): FitScores {
  if (readings.length !== model.length) {
    throw new RangeError(
      `fitScores requires as many model values as readings: got ${model.length}, ${readings.length}`,
    );
  }
  const at = Array.from({ length: readings.length }, (_, i) => i).filter((i) => !Number.isNaN(readings[i]));
  const count = at.length;
  if (count === 0) throw new RangeError("fitScores requires a reading: got none");
  const wrong = at.find((i) => !Number.isFinite(model[i]));
  if (wrong !== undefined)
    throw new RangeError(`fitScores requires finite model values: got ${model[wrong]} at ${wrong}`);
  const mean = (of: (i: number) => number): number => at.reduce((sum, i) => sum + of(i), 0) / count;
  const readMean = mean((i) => readings[i]);
  const modelMean = mean((i) => model[i]);
  const square = mean((i) => (model[i] - readings[i]) ** 2);
  const readVariance = mean((i) => (readings[i] - readMean) ** 2);
  const modelVariance = mean((i) => (model[i] - modelMean) ** 2);
  const correlation =
    mean((i) => (model[i] - modelMean) * (readings[i] - readMean)) / Math.sqrt(readVariance * modelVariance);
  const kge = 1 - Math.hypot(correlation - 1, Math.sqrt(modelVariance / readVariance) - 1, modelMean / readMean - 1);
  return {
    count,
    rmse: Math.sqrt(square),
    bias: mean((i) => model[i] - readings[i]),
    nse: readVariance > 0 ? 1 - square / readVariance : Number.NaN,
    kge: readVariance > 0 && modelVariance > 0 && readMean !== 0 ? kge : Number.NaN,
  };
}
