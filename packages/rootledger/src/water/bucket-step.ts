import type { FaceFlows } from "./bucket-flows.js";
import type { PondWork } from "./bucket-surface.js";
import type { Ground } from "./ground.js";

/** Largest change of theta that any cell would make in one step at the pace of its start. */
const mostChange = 0.1;
/** A cell that rises counts by half with this much room left: what it cannot take goes up or aside. */
const littleRoom = 0.005;
const doubtfulPace = 6;
const restedPace = 10;

/**
 * Shortens `step[0]` until no cell's change is in doubt by more than `step[1]`, m3/m3. In doubt is that part of the change at
 * the pace of the start which the change itself slows down: change x p / (6 + p), where p is the step over the time in which
 * the cell comes to rest with its upper and lower neighbour; less of it once that time is long past (over p beyond 10). Both
 * numbers were chosen from runs with very short steps. The step nowhere jumps with the state: rounding would grow.
 *
 * @example chooseStep(step, flows, pond, ground, perVolume, theta)
 */
export function chooseStep(
  step: Float64Array,
  { net, back }: FaceFlows,
  { follow, surface }: PondWork,
  { grid, thetaSaturated }: Ground,
  perVolume: Float64Array,
  theta: Float64Array,
): void {
  const { lanes, cells } = grid;
  const { intake } = surface;
  const doubt = step[1];
  let dtH = step[0];
  for (let c = 0; c < cells; c++) {
    const top = c < lanes;
    const rate = (top ? net[c] + intake[c] : net[c]) * perVolume[c];
    const slowing = (top ? back[c] + follow[c] : back[c]) * perVolume[c];
    const room = thetaSaturated[c] - theta[c];
    const fast = rate < 0 ? -rate : (rate * room) / (room + littleRoom);
    if (fast * dtH > mostChange) dtH = mostChange / fast;
    const p = slowing * dtH;
    if (restedPace * fast * dtH * p <= doubt * (doubtfulPace + p) * (restedPace + p)) continue;
    const a = slowing * (restedPace * fast - doubt * slowing);
    const b = doubt * (restedPace + doubtfulPace) * slowing;
    dtH = (b + Math.sqrt(b * b + 4 * restedPace * doubtfulPace * doubt * a)) / (2 * a);
  }
  step[0] = dtH;
}
