import seedrandom from "seedrandom";

/** Draws of one stream, each from the ones before it; the same key always gives the same draws. */
export interface ChanceStream {
  /** Uniform in [0, 1). */
  readonly uniform: () => number;
  /** Of mean 0 and variance 1. */
  readonly normal: () => number;
  /** Of mean shape x scale and variance shape x scale^2. */
  readonly gamma: (shape: number, scale: number) => number;
}

/**
 * A stream keyed `seed:member:name`, so that a member and a stream never depend on the order or number of others. Normals by Marsaglia's polar method
 * (Marsaglia & Bray 1964), gamma by Marsaglia & Tsang (2000), ACM TOMS 26:363-372, with its boost for shapes below 1.
 *
 * @example chanceStream(7, 0, "rain").uniform() === chanceStream(7, 0, "rain").uniform() // true
 */
export function chanceStream(seed: string | number, member: number, name: string): ChanceStream {
  const draw = seedrandom.alea(`${seed}:${member}:${name}`);
  const uniform = (): number => draw();
  let spare = Number.NaN;
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * factor;
      return x * factor;
    }
  };
  const unitGamma = (shape: number): number => {
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      const u = 1 - uniform();
      if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  const gamma = (shape: number, scale: number): number =>
    shape >= 1 ? unitGamma(shape) * scale : unitGamma(shape + 1) * Math.exp(Math.log(1 - uniform()) / shape) * scale;
  return { uniform, normal, gamma };
}
