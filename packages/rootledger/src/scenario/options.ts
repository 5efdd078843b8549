import type { TreeName } from "../water/result.js";

/** How a scenario is run; nothing here changes what is simulated. */
export interface SimulateOptions {
  /** Default: the mean tree alone. */
  readonly trees?: readonly TreeName[];
  /** Least number of lanes across half a row; default 8. */
  readonly lanes?: number;
  /** Largest change of theta in a sub-step, m3/m3; default 0.01. */
  readonly thetaChangePerStep?: number;
  /** Hours whose theta is kept for every cell of the mean tree. */
  readonly cells?: { readonly fromHour: number; readonly hours: number };
}
