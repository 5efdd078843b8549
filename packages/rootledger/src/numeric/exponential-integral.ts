const eulerGamma = 0.5772156649015329;
const fractionTerms = 64;

/** Source: Abramowitz & Stegun (1964), eq. 5.1.11. */
function bySeries(x: number): number {
  let power = -1;
  let sum = 0;
  for (let k = 1; k < 40; k++) {
    power *= -x / k;
    sum += power / k;
  }
  return sum - eulerGamma - Math.log(x);
}

/** exp(x) E1(x) by continued fraction, from its tail. Source: Abramowitz & Stegun (1964), eq. 5.1.22. */
function scaledByFraction(x: number): number {
  let tail = x + 2 * fractionTerms + 1;
  for (let k = fractionTerms; k >= 1; k--) tail = x + 2 * k - 1 - (k * k) / tail;
  return 1 / tail;
}

/**
 * exp(x) E1(x) with the exponential integral E1(x) = int_x^inf exp(-t)/t dt; tends to 1/x for large x. Relative error below
 * 1e-13.
 * @throws RangeError when x is not above 0. @example scaledExponentialIntegral(1) // 0.596347362323194
 */
export function scaledExponentialIntegral(x: number): number {
  if (!(x > 0)) throw new RangeError(`scaledExponentialIntegral requires x above 0: got ${x}`);
  return x < 1.5 ? Math.exp(x) * bySeries(x) : scaledByFraction(x);
}
