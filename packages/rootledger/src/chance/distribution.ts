import { normalQuantile, normalShare } from "../numeric/normal-share.js";

/** How a number that nobody knows is spread. `normal` is cut at `from` and `to`; bounds belong to the range. */
export type Distribution =
  | { readonly kind: "uniform" | "log-uniform"; readonly from: number; readonly to: number }
  | { readonly kind: "triangular"; readonly from: number; readonly mode: number; readonly to: number }
  | {
      readonly kind: "normal";
      readonly mean: number;
      readonly deviation: number;
      readonly from: number;
      readonly to: number;
    }
  | { readonly kind: "choice"; readonly values: readonly number[]; readonly weights: readonly number[] };

/**
 * Refuses a distribution that has no draws.
 * @throws RangeError if a number is not finite, bounds do not rise, a mode lies outside or weights are not above 0.
 * @example requireDistribution("kcb", { kind: "uniform", from: 0.8, to: 1.2 })
 */
export function requireDistribution(name: string, spread: Distribution): void {
  const fail = (rule: string): never => {
    throw new RangeError(`${name} requires ${rule}: got ${JSON.stringify(spread)}`);
  };
  if (spread.kind === "choice") {
    const { values, weights } = spread;
    if (values.length === 0 || values.length !== weights.length) fail("as many weights as values, at least one");
    if (!values.every(Number.isFinite)) fail("finite values");
    if (!weights.every((weight) => weight > 0 && weight < Number.POSITIVE_INFINITY)) fail("weights above 0");
    return;
  }
  const { from, to } = spread;
  if (!(Number.isFinite(from) && Number.isFinite(to) && from < to)) fail("finite bounds, from below to");
  if (spread.kind === "log-uniform" && !(from > 0)) fail("bounds above 0");
  if (spread.kind === "triangular" && !(spread.mode >= from && spread.mode <= to)) fail("a mode within its bounds");
  if (spread.kind === "normal") {
    if (!Number.isFinite(spread.mean)) fail("a finite mean");
    if (!(spread.deviation > 0 && spread.deviation < Number.POSITIVE_INFINITY)) fail("a deviation above 0");
  }
}

/**
 * The value below which a share of the draws lies, 0 <= share <= 1: the inverse of the cumulative distribution. Triangular:
 * from + sqrt(share (to - from)(mode - from)) below the mode, mirrored above it.
 * @example quantileOf({ kind: "triangular", from: 0, mode: 1, to: 2 }, 0.5) // 1
 */
export function quantileOf(spread: Distribution, share: number): number {
  switch (spread.kind) {
    case "uniform":
      return spread.from + share * (spread.to - spread.from);
    case "log-uniform":
      return spread.from * Math.exp(share * Math.log(spread.to / spread.from));
    case "triangular": {
      const { from, mode, to } = spread;
      const width = to - from;
      return share * width < mode - from
        ? from + Math.sqrt(share * width * (mode - from))
        : to - Math.sqrt((1 - share) * width * (to - mode));
    }
    case "normal": {
      const { mean, deviation, from, to } = spread;
      const low = normalShare((from - mean) / deviation);
      const high = normalShare((to - mean) / deviation);
      const value = mean + deviation * normalQuantile(low + share * (high - low));
      return value < from ? from : value > to ? to : value;
    }
    case "choice": {
      const { values, weights } = spread;
      const whole = weights.reduce((sum, weight) => sum + weight, 0);
      let below = 0;
      for (let i = 0; i < values.length - 1; i++) {
        below += weights[i];
        if (share * whole < below) return values[i];
      }
      return values[values.length - 1];
    }
  }
}
