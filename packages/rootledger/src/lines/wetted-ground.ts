import type { EmitterPlace } from "./emitters-of-tree.js";

/** Areas of one tree's ground, m2. Wetted circles that overlap count once. */
export interface WettedGround {
  readonly wettedM2: number;
  /** Wetted and over the root disc. */
  readonly onRootsM2: number;
  /** Wetted, beyond the root disc, not under the canopy: it dries by evaporation and weeds. */
  readonly bareWithoutRootsM2: number;
}

const slices = 400;

/**
 * Ground of one tree that its open emitters and its neighbours' wet, as circles of one radius, and how much of it the root
 * disc and the canopy cover. All trees of the row carry the same pattern. Midpoint rule over slices across the row, each
 * slice's stretches merged exactly.
 *
 * @param open one word for each emitter, true where open
 * @throws RangeError if radii are negative or the pattern has another length than the emitters.
 * @example wettedGround([{ alongM: 0, acrossM: 0, fromTrunkM: 0 }], [true], { wettedRadiusM: 0.5, rootRadiusM: 1, canopyRadiusM: 1, treeSpacingM: 4, rowSpacingM: 6 }).wettedM2 // 0.785
 */
export function wettedGround(
  emitters: readonly EmitterPlace[],
  open: readonly boolean[],
  ground: {
    readonly wettedRadiusM: number;
    readonly rootRadiusM: number;
    readonly canopyRadiusM: number;
    readonly treeSpacingM: number;
    readonly rowSpacingM: number;
  },
): WettedGround {
  const { wettedRadiusM, rootRadiusM, canopyRadiusM, treeSpacingM, rowSpacingM } = ground;
  if (open.length !== emitters.length) {
    throw new RangeError(`wettedGround requires a word for each of ${emitters.length} emitters: got ${open.length}`);
  }
  if (!(wettedRadiusM > 0 && rootRadiusM >= 0 && canopyRadiusM >= 0)) {
    throw new RangeError(
      `wettedGround requires a wetted radius above 0 m and others from 0: got ${wettedRadiusM}, ${rootRadiusM}, ${canopyRadiusM}`,
    );
  }
  const running = emitters.filter((_, at) => open[at]);
  const [lowM, highM] = sliceRange(running, wettedRadiusM, rowSpacingM);
  const stepM = (highM - lowM) / slices;
  let wetted = 0;
  let onRoots = 0;
  let covered = 0;
  for (let s = 0; s < slices && stepM > 0; s++) {
    const acrossM = lowM + (s + 0.5) * stepM;
    const wet = merged(running, acrossM, wettedRadiusM, treeSpacingM);
    const roots = chord(rootRadiusM, acrossM);
    const shade = chord(canopyRadiusM, acrossM);
    const widest = roots > shade ? roots : shade;
    wetted += lengthWithin(wet, Number.POSITIVE_INFINITY);
    onRoots += lengthWithin(wet, roots);
    covered += lengthWithin(wet, widest);
  }
  return { wettedM2: wetted * stepM, onRootsM2: onRoots * stepM, bareWithoutRootsM2: (wetted - covered) * stepM };
}

/** Where across the row anything is wet, inside the tree's own half rows. */
function sliceRange(running: readonly EmitterPlace[], radiusM: number, rowSpacingM: number): [number, number] {
  if (running.length === 0) return [0, 0];
  const at = running.map(({ acrossM }) => acrossM);
  return [Math.max(Math.min(...at) - radiusM, -rowSpacingM / 2), Math.min(Math.max(...at) + radiusM, rowSpacingM / 2)];
}

const chord = (radiusM: number, acrossM: number): number =>
  Math.abs(acrossM) < radiusM ? Math.sqrt(radiusM * radiusM - acrossM * acrossM) : 0;

/** Wet stretches along the row in one slice, merged, within the tree's own stretch; neighbours' circles reach in. */
function merged(
  running: readonly EmitterPlace[],
  acrossM: number,
  radiusM: number,
  treeSpacingM: number,
): [number, number][] {
  const half = treeSpacingM / 2;
  const reach = Math.ceil((radiusM + half) / treeSpacingM);
  const all: [number, number][] = [];
  for (const emitter of running) {
    const halfChord = chord(radiusM, acrossM - emitter.acrossM);
    if (halfChord === 0) continue;
    for (let tree = -reach; tree <= reach; tree++) {
      const middle = emitter.alongM + tree * treeSpacingM;
      const from = Math.max(middle - halfChord, -half);
      const to = Math.min(middle + halfChord, half);
      if (to > from) all.push([from, to]);
    }
  }
  all.sort((a, b) => a[0] - b[0]);
  const out: [number, number][] = [];
  for (const [from, to] of all) {
    const last = out[out.length - 1];
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
}

/** Length of the stretches that lies within a distance of the trunk's line. */
function lengthWithin(stretches: readonly (readonly [number, number])[], halfM: number): number {
  let sum = 0;
  for (const [from, to] of stretches) {
    const low = from > -halfM ? from : -halfM;
    const high = to < halfM ? to : halfM;
    if (high > low) sum += high - low;
  }
  return sum;
}
