/**
 * Root of a continuous function between two points where its sign differs, by false position that halves the weight of an end
 * kept twice (the Illinois rule): some ten calls for a smooth function, for those where a call costs much.
 * Source: Dowell & Jarratt (1971), BIT 11:168-174.
 * @param relative width of the last bracket or step, as a share of the root
 * @throws RangeError when the signs at the ends are the same, or 200 steps do not settle it.
 * @example falsePosition((x) => x * x - 2, 0, 2, 1e-12) // 1.41421356237
 */
export function falsePosition(f: (x: number) => number, from: number, to: number, relative: number): number {
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) {
    throw new RangeError(`falsePosition requires a change of sign between ${from} and ${to}: got ${fa} and ${fb}`);
  }
  for (let step = 0; step < 200; step++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (fx === 0 || Math.abs(x - b) <= relative * Math.abs(x)) return x;
    if (fx > 0 === fb > 0) {
      fa /= 2;
    } else {
      a = b;
      fa = fb;
    }
    b = x;
    fb = fx;
    if (Math.abs(b - a) <= relative * Math.abs(b)) return b;
  }
  throw new RangeError(
    `falsePosition requires a smooth function: 200 steps between ${from} and ${to} did not settle it`,
  );
}
