import { chanceStream } from "../numeric/chance-stream.js";

/** Points of the unit cube, row by row, at which a model is to be run. */
export interface MorrisDesign {
  readonly unknowns: number;
  readonly trajectories: number;
  readonly step: number;
  readonly points: Float64Array;
  /** Unknown that moves from each point of a trajectory to the next, `order[trajectory * unknowns + k]`. */
  readonly order: Int32Array;
}

/** What one unknown does to an answer, in the answer's unit over its whole range. */
export interface ElementaryEffects {
  readonly mean: number;
  /** Mean of the absolute effects: the rank of the unknown. */
  readonly meanAbsolute: number;
  /** Spread of the effects: interaction or curvature. */
  readonly deviation: number;
}

const levels = 4;

/**
 * Trajectories of Morris (1991), Technometrics 33:161-174: from a random point of a grid of four levels, each unknown in turn
 * steps by 2/3 of its range, so that unknowns + 1 runs give one effect of each. A trajectory depends on the seed and its
 * number alone.
 *
 * @throws RangeError unless unknowns and trajectories are whole numbers above 0.
 * @example morrisDesign(2, 3, 1).points.length // 18
 */
export function morrisDesign(unknowns: number, trajectories: number, seed: string | number): MorrisDesign {
  for (const count of [unknowns, trajectories]) {
    if (!(Number.isInteger(count) && count > 0)) {
      throw new RangeError(`morrisDesign requires whole numbers above 0: got ${unknowns}, ${trajectories}`);
    }
  }
  const step = levels / (2 * (levels - 1));
  const points = new Float64Array(trajectories * (unknowns + 1) * unknowns);
  const order = new Int32Array(trajectories * unknowns);
  for (let t = 0; t < trajectories; t++) {
    const { uniform } = chanceStream(seed, t, "morris");
    const at = Array.from({ length: unknowns }, () => Math.floor(uniform() * levels) / (levels - 1));
    const turn = Array.from({ length: unknowns }, (_, i) => i);
    for (let i = unknowns - 1; i > 0; i--) {
      const j = Math.floor(uniform() * (i + 1));
      [turn[i], turn[j]] = [turn[j], turn[i]];
    }
    const first = t * (unknowns + 1);
    points.set(at, first * unknowns);
    turn.forEach((unknown, k) => {
      at[unknown] += at[unknown] < 0.5 ? step : -step;
      order[t * unknowns + k] = unknown;
      points.set(at, (first + k + 1) * unknowns);
    });
  }
  return { unknowns, trajectories, step, points, order };
}

/**
 * Elementary effects (y(x + step) - y(x)) / step by unknown; mean, mean of the absolutes (Campolongo, Cariboni & Saltelli
 * 2007, Environmental Modelling & Software 22:1509-1518) and deviation over the trajectories. A trajectory's effects that
 * touch a point without an answer (NaN) are left out.
 *
 * @param answers one for each point of the design
 * @throws RangeError if their number is not that of the points.
 * @example elementaryEffects(design, answers)[0].meanAbsolute
 */
export function elementaryEffects(design: MorrisDesign, answers: Float64Array): ElementaryEffects[] {
  const { unknowns, trajectories, points, order } = design;
  if (answers.length * unknowns !== points.length) {
    throw new RangeError(`elementaryEffects requires ${points.length / unknowns} answers: got ${answers.length}`);
  }
  const effects = Array.from({ length: unknowns }, (): number[] => []);
  for (let t = 0; t < trajectories; t++) {
    for (let k = 0; k < unknowns; k++) {
      const row = t * (unknowns + 1) + k;
      const unknown = order[t * unknowns + k];
      const moved = points[(row + 1) * unknowns + unknown] - points[row * unknowns + unknown];
      const effect = (answers[row + 1] - answers[row]) / moved;
      if (!Number.isNaN(effect)) effects[unknown].push(effect);
    }
  }
  return effects.map((list) => {
    const n = list.length;
    const mean = list.reduce((sum, effect) => sum + effect, 0) / n;
    const squares = list.reduce((sum, effect) => sum + (effect - mean) * (effect - mean), 0);
    return {
      mean,
      meanAbsolute: list.reduce((sum, effect) => sum + Math.abs(effect), 0) / n,
      deviation: n > 1 ? Math.sqrt(squares / (n - 1)) : 0,
    };
  });
}
