/** What each control accepts, both ends included; links are held to the same. */
export const limits = {
  everyDays: [1, 60],
  pulses: [1, 24],
  pulseMinutes: [1, 6000],
  gapMinutes: [0, 1440],
  flowLPerH: [0.2, 20],
  litresPerDay: [1, 1000],
  treeSpacingM: [0.5, 15],
  rowSpacingM: [1, 15],
  canopyDiameterM: [0.2, 15],
  lines: [1, 4],
  lineDistanceM: [0.1, 5],
  emitterSpacingM: [0.1, 5],
  /** Most places for emitters of one tree. */
  emittersPerTree: 200,
  rootRadiusM: [0.05, 8],
  rootDepthCm: [5, 200],
  sensorDepthCm: 200,
  sensorAtCm: [0, 500],
  readingKPa: [0, 200],
} as const;
