const seriesEnd = 2;
const fractionTerms = 64;

/** Series of positive terms. Source: Abramowitz & Stegun (1964), eq. 7.1.6. */
function erfBySeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}

/** exp(x^2) erfc(x) by continued fraction, from its tail. Source: Abramowitz & Stegun (1964), eq. 7.1.14. */
function scaledByFraction(x: number): number {
  let tail = x;
  for (let n = fractionTerms; n >= 1; n--) tail = x + n / 2 / tail;
  return 1 / (Math.sqrt(Math.PI) * tail);
}

/** Complementary error function (2/sqrt(pi)) int_x^inf exp(-t^2) dt; relative error below 1e-13. @example erfc(0) // 1 */
export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x);
  if (x < seriesEnd) return 1 - erfBySeries(x);
  return Math.exp(-x * x) * scaledByFraction(x);
}

/**
 * exp(x^2) erfc(x), finite where erfc itself is too small for a number.
 * @throws RangeError when x is negative. @example scaledErfc(0) // 1
 */
export function scaledErfc(x: number): number {
  if (!(x >= 0)) throw new RangeError(`scaledErfc requires x of at least 0: got ${x}`);
  if (x < seriesEnd) return Math.exp(x * x) * (1 - erfBySeries(x));
  return scaledByFraction(x);
}
