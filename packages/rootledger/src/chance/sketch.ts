import { createCountTable } from "../numeric/count-table.js";

/** Values up to this many are kept as they are; more go into bins. Our choice: 8 kB a number. */
const mostKept = 1024;
/** Leading bits of the mantissa that name a bin: 512 bins from a power of two to the next. */
const mantissaBits = 9;
const shift = 20 - mantissaBits;

/** A sketch as plain data, to be written down and read again. Either `kept` or `bins` is filled. */
export interface PlainSketch {
  readonly count: number;
  readonly least: number;
  readonly most: number;
  readonly kept: readonly number[];
  /** Each bin's number and then how many values it holds, rising by number; in one flat list to be small. */
  readonly bins: readonly number[];
}

/** The two ends and the middle of what was seen. */
export interface Band {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** Quantiles of a stream of numbers in flat memory. */
export interface Sketch {
  /** @throws RangeError if the value is not finite. */
  readonly add: (value: number) => void;
  /** Adds what another sketch has seen. */
  readonly merge: (other: PlainSketch) => void;
  /** The middle and the band that leaves out a share of the values at each end, 0.05 for a 90 % band; NaN where nothing was added. */
  readonly band: (tail: number) => Band;
  /** The sketch as plain data. */
  readonly plain: () => PlainSketch;
}

/**
 * Up to 1,024 values are kept and quantiles are exact; beyond, all of them are counted in bins 1/512 of a power of two wide,
 * and a quantile is right within 0.1 % of its own size. What it says depends on the set of values alone, never on their
 * order or on how they were shared out before `merge`: bins have fixed places, the switch goes by the count, and zero has
 * no sign. Quantiles
 * between two values are linear by rank, (n - 1) share (Hyndman & Fan 1996, type 7); the upper one counts from the top, so
 * that changing every sign changes theirs exactly.
 *
 * @example createSketch().plain().count // 0
 */
export function createSketch(from?: PlainSketch): Sketch {
  const bits = new DataView(new ArrayBuffer(8));
  let count = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  let kept: number[] = [];
  const bins = createCountTable();
  const binned = bins.add;
  const spill = (): void => {
    for (const value of kept) binned(binOf(bits, value), 1);
    kept = [];
  };
  const bounds = (low: number, high: number): void => {
    if (low < least) least = low;
    if (high > most) most = high;
  };

  function add(given: number): void {
    if (!Number.isFinite(given)) throw new RangeError(`a sketch requires finite values: got ${given}`);
    const value = given === 0 ? 0 : given;
    count++;
    bounds(value, value);
    if (count <= mostKept) {
      kept.push(value);
      return;
    }
    if (kept.length > 0) spill();
    binned(binOf(bits, value), 1);
  }

  function merge(other: PlainSketch): void {
    if (other.count === 0) return;
    count += other.count;
    bounds(other.least, other.most);
    if (count <= mostKept) {
      for (const value of other.kept) kept.push(value);
      return;
    }
    spill();
    for (const value of other.kept) binned(binOf(bits, value), 1);
    for (let i = 0; i < other.bins.length; i += 2) binned(other.bins[i], other.bins[i + 1]);
  }

  function band(tail: number): Band {
    if (count === 0) return { low: Number.NaN, median: Number.NaN, high: Number.NaN };
    const place = (count - 1) * tail;
    const rank = Math.floor(place);
    const part = place - rank;
    const at = count <= mostKept ? keptRanks(kept) : binRanks(bits, bins.rising(), least, most);
    const between = (a: number, b: number, share: number): number => (share === 0 ? a : a + share * (b - a));
    const last = count - 1;
    const next = rank < last ? rank + 1 : rank;
    const middle = last / 2;
    const lower = at(Math.floor(middle));
    const upper = at(Math.ceil(middle));
    return {
      low: between(at(rank), at(next), part),
      median: lower === upper ? lower : (lower + upper) / 2,
      high: between(at(last - rank), at(last - next), part),
    };
  }

  const plain = (): PlainSketch => ({
    count,
    least,
    most,
    kept: kept.slice().sort((a, b) => a - b),
    bins: bins.rising(),
  });
  if (from !== undefined) merge(from);
  return { add, merge, band, plain };
}

/** Sign, exponent and leading mantissa bits as one whole number; zero of either sign is bin 0. */
function binOf(bits: DataView, value: number): number {
  if (value === 0) return 0;
  bits.setFloat64(0, value);
  return bits.getUint32(0) >>> shift;
}

/** Middle of a bin: half a bin above its edge in the direction away from zero. */
function middleOf(bits: DataView, bin: number): number {
  if (bin === 0) return 0;
  bits.setUint32(0, bin << shift);
  bits.setUint32(4, 0);
  const edge = bits.getFloat64(0);
  bits.setUint32(0, (bin + 1) << shift);
  const next = bits.getFloat64(0);
  return Number.isFinite(next) ? (edge + next) / 2 : edge;
}

function keptRanks(kept: readonly number[]): (rank: number) => number {
  const sorted = kept.slice().sort((a, b) => a - b);
  return (rank) => sorted[rank];
}

function binRanks(bits: DataView, bins: readonly number[], least: number, most: number): (rank: number) => number {
  const rising = Array.from(
    { length: bins.length / 2 },
    (_, i) => [middleOf(bits, bins[2 * i]), bins[2 * i + 1]] as const,
  );
  rising.sort(([a], [b]) => a - b);
  const whole = rising.reduce((sum, [, many]) => sum + many, 0);
  return (rank) => {
    if (rank === 0) return least;
    if (rank === whole - 1) return most;
    let below = 0;
    for (const [value, many] of rising) {
      below += many;
      if (rank < below) return value < least ? least : value > most ? most : value;
    }
    return most;
  };
}
