/**
 * Root between two points where the function's sign differs, within 1e-6, by the Illinois form of false position
 * (Dowell & Jarratt 1971, BIT 11:168-174): few evaluations of a costly, smooth function.
 * @throws RangeError when the signs at the ends are the same.
 */
export function falsePosition(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (!(fa * fb < 0)) throw new RangeError(`falsePosition requires a change of sign: got ${fa} and ${fb}`);
  let before = Number.POSITIVE_INFINITY;
  for (;;) {
    const x = b - (fb * (b - a)) / (fb - fa);
    if (Math.abs(x - before) < 1e-6) return x;
    before = x;
    const fx = f(x);
    if (fx * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [x, fx];
  }
}
