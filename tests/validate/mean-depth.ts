/** The part of the top 50 cm that each probe stands for, cm: half way to its neighbours, the deepest to 50 cm. */
const thicknessCm: Readonly<Record<number, number>> = { 5: 7.5, 10: 7.5, 20: 20, 50: 15, 100: 0 };

/** Share of each probe in the 0-50 cm mean; without a 50 cm probe the shares are those of 0-35 cm. */
function meanShares(depthsCm: readonly number[]): number[] {
  const whole = measuredCm(depthsCm);
  return depthsCm.map((depth) => thicknessCm[depth] / whole);
}

/** Depth that the probes of the top 50 cm stand for together, cm. */
export const measuredCm = (depthsCm: readonly number[]): number =>
  depthsCm.reduce((sum, depth) => sum + thicknessCm[depth], 0);

/** The mean over the top 50 cm of every day; NaN where a probe of it is missing. */
export function meanTheta(depthsCm: readonly number[], theta: readonly Float64Array[]): Float64Array {
  const shares = meanShares(depthsCm);
  return Float64Array.from(theta[0], (_, d) =>
    shares.reduce((sum, share, k) => (share > 0 ? sum + share * theta[k][d] : sum), 0),
  );
}
