/**
 * Root of a continuous function between two points where its sign differs, by bisection to the last digit that halves.
 * @throws RangeError when the signs at the ends are the same.
 * @example bisect((x) => x * x - 2, 0, 2) // 1.414213562373095
 */
export function bisect(f: (x: number) => number, from: number, to: number): number {
  let a = from;
  let b = to;
  const fa = f(a);
  const fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) {
    throw new RangeError(`bisect requires a change of sign between ${from} and ${to}: got ${fa} and ${fb}`);
  }
  for (;;) {
    const middle = a + (b - a) / 2;
    if (middle === a || middle === b) return middle;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0 === fa > 0) a = middle;
    else b = middle;
  }
}
