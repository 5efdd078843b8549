/** What a rule may know when it decides. All of the mean tree; sums are since the last decision, or since the season's start. */
export interface Morning {
  /** Day of the season. */
  readonly day: number;
  /** Hours since the season's first midnight. */
  readonly hour: number;
  /** A copy: theta by cell, m3/m3. */
  readonly theta: Float64Array;
  /** Tension at a depth and a distance from the line or emitter, kPa; below 0 under free water. */
  readonly tensionKPa: (depthCm: number, fromLineCm: number) => number;
  readonly rainMm: number;
  /** Rain that met the soil of the rooted lanes, L per tree. */
  readonly rootedRainL: number;
  readonly wantedL: number;
  readonly transpiredL: number;
  readonly evaporatedL: number;
  /** Openings and closings so far, h. */
  readonly valveH: Float64Array;
  /** Numbers that a rule may carry from one decision to the next; all 0 at first. */
  readonly memory: Float64Array;
}

/** Numbers that a rule may carry. */
export const memoryLength = 8;

/** A run that is asked for, before any limit. */
export interface Asked {
  /** Clock time of the first opening, hours since the midnight of that day, at or after the decision. */
  readonly startH: number;
  /** All pulses together. */
  readonly minutes: number;
  readonly pulses: number;
  readonly gapMinutes: number;
}
