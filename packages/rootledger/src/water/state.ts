import type { WaterState } from "./engine.js";

/** A copy that shares nothing with the state, an engine's own memory included. @example copyState(tree.state) */
export function copyState(state: WaterState): WaterState {
  return {
    timeH: state.timeH,
    theta: Float64Array.from(state.theta),
    ...(state.headCm === undefined ? {} : { headCm: Float64Array.from(state.headCm) }),
    ...(state.stepH === undefined ? {} : { stepH: state.stepH }),
    ...(state.fine === undefined ? {} : { fine: copyState(state.fine) }),
  };
}

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
