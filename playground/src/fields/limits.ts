/** What each control accepts, both ends included; links are held to the same. */
export const limits = {
  everyDays: [1, 60],
  pulses: [1, 24],
  pulseMinutes: [1, 6000],
  gapMinutes: [0, 1440],
  flowLPerH: [0.2, 20],
  litresPerDay: [1, 1000],
} as const;
