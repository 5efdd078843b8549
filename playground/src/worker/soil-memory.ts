import type { Result, Simulation } from "rootledger";

/** Water of every cell at each midnight of the last season computed, by place of the arm in the comparison. */
export interface SoilMemory {
  readonly arms: readonly RememberedArm[];
}

interface RememberedArm {
  readonly section: Result["section"];
  /** `[day * cells + cell]`, at the beginning of the day; the first one is that of the first hour. */
  readonly theta: Float64Array;
}

/** Copies what a preview needs before the season's arrays are given away. */
export function remember(results: readonly Result[]): SoilMemory {
  return {
    arms: results.map((result) => {
      const { section, days } = result;
      const count = section.layers * section.lanes;
      const theta = new Float64Array(days.rows * count);
      for (let day = 0; day < days.rows; day++) theta.set(soilAt(result, day), day * count);
      return { section: structuredClone(section), theta };
    }),
  };
}

/** Water of every cell of the mean tree at the beginning of a day; the first day's is that of the first hour. */
export function soilAt({ section, cells }: Result, day: number): Float64Array {
  const count = section.layers * section.lanes;
  const hour = Math.max(0, day * 24 - 1);
  return cells!.theta.slice(hour * count, (hour + 1) * count);
}

/**
 * Puts a fresh simulation of one tree into the soil as it was remembered on a day of the season.
 * @returns false if the arm's soil or cells are others now
 */
export function recall(memory: SoilMemory, arm: number, day: number, simulation: Simulation): boolean {
  const known = memory.arms[arm];
  const { section } = simulation.result();
  if (!known || !sameCells(known.section, section)) return false;
  const count = section.layers * section.lanes;
  beginFrom(simulation, known.theta.subarray(day * count, (day + 1) * count));
  return true;
}

/** Puts a fresh simulation of one tree into soil of this water content, cell by cell. */
export function beginFrom(simulation: Simulation, from: Float64Array): void {
  const { volumeCm3 } = simulation.result().section;
  const theta = Array.from(from);
  const stored = theta.reduce((sum, share, cell) => sum + share * volumeCm3[cell]!, 0);
  const fresh = simulation.snapshot();
  simulation.restore({ ...fresh, states: [{ timeH: fresh.hour, theta }], storedCm3: [stored] });
}

function sameCells(a: Result["section"], b: Result["section"]): boolean {
  const equal = (x: Float64Array, y: Float64Array): boolean => x.length === y.length && x.every((v, i) => v === y[i]);
  return (
    equal(a.layerEdgesCm, b.layerEdgesCm) &&
    equal(a.laneEdgesCm, b.laneEdgesCm) &&
    equal(a.thetaSaturated, b.thetaSaturated) &&
    equal(a.thetaAtPullLimit, b.thetaAtPullLimit)
  );
}
