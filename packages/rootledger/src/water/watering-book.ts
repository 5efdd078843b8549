/**
 * Why a run was shortened or left out. `overlap`: the run before was still on, or the next decision came first.
 * `fewer-pulses` loses nothing: the minutes were given in fewer openings.
 */
export type CutReason =
  | "rain"
  | "longest-run"
  | "pump-hours"
  | "allocation"
  | "allowed-hours"
  | "shortest-pulse"
  | "overlap"
  | "fewer-pulses";

/** One run of one day that was not given as it was asked for. */
export interface Cut {
  readonly day: number;
  readonly reason: CutReason;
  /** Minutes that were asked for and not given, for this reason. */
  readonly minutes: number;
}

/** What a programme that decides, or has limits, asked for: asked = given + all cuts. */
export interface WateringBook {
  /** Runs asked for, and those that opened the valve at all. */
  readonly askedRuns: number;
  readonly givenRuns: number;
  readonly askedMinutes: number;
  /** Of the openings decided on; the last may reach beyond the season. */
  readonly givenMinutes: number;
  readonly cuts: readonly Cut[];
}
