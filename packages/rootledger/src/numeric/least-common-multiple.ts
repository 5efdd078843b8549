/** Smallest whole number that both go into. @example leastCommonMultiple(4, 6) // 12 */
export function leastCommonMultiple(a: number, b: number): number {
  let x = a;
  let y = b;
  while (y > 0) [x, y] = [y, x % y];
  return (a * b) / x;
}
