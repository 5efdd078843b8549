import type { WaterState } from "./engine.js";

/** A copy that shares nothing with the state, an engine's own memory included. @example copyState(tree.state) */
export const copyState = (state: WaterState): WaterState => stateFromPlain(state);

/** Puts `state` back to what `from` holds, in place. @example restoreState(tree.state, snapshot) */
export function restoreState(state: WaterState, from: WaterState): void {
  const copy = copyState(from);
  state.timeH = copy.timeH;
  state.theta.set(copy.theta);
  if (copy.headCm === undefined) delete state.headCm;
  else state.headCm = copy.headCm;
  if (copy.stepH === undefined) delete state.stepH;
  else state.stepH = copy.stepH;
  if (copy.fine === undefined) delete state.fine;
  else state.fine = copy.fine;
}

/** The state as plain numbers, fit for JSON. */
export interface PlainState {
  readonly timeH: number;
  readonly theta: readonly number[];
  readonly headCm?: readonly number[];
  readonly stepH?: number;
  readonly fine?: PlainState;
}

/** @example plainState(tree.state).theta.length */
export const plainState = (state: WaterState): PlainState => ({
  timeH: state.timeH,
  theta: Array.from(state.theta),
  ...(state.headCm && { headCm: Array.from(state.headCm) }),
  ...(state.stepH !== undefined && { stepH: state.stepH }),
  ...(state.fine && { fine: plainState(state.fine) }),
});

/** @example stateFromPlain(JSON.parse(text)).theta.length */
export const stateFromPlain = (plain: Plain): WaterState => ({
  timeH: plain.timeH,
  theta: Float64Array.from(plain.theta),
  ...(plain.headCm && { headCm: Float64Array.from(plain.headCm) }),
  ...(plain.stepH !== undefined && { stepH: plain.stepH }),
  ...(plain.fine && { fine: stateFromPlain(plain.fine) }),
});

/** Numbers in lists or typed arrays. */
interface Plain {
  readonly timeH: number;
  readonly theta: ArrayLike<number>;
  readonly headCm?: ArrayLike<number>;
  readonly stepH?: number;
  readonly fine?: Plain;
}
