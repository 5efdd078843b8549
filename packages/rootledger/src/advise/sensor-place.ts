/** Where a tensiometer or probe sits. */
export interface SensorPlace {
  readonly depthCm: number;
  /** From the line nearest the tree row, or from the emitter of rings, away from the row, cm; negative towards it. */
  readonly fromLineCm: number;
}
