/** Every text of `convergence` that is not a number. */
export const convergenceWords = {
  what: "mean tree; the value as usual (steps with at most 0.005 of a change of theta in doubt, usual layers), then how much finer runs change it.",
  measure: {
    airless: "Airless, root-hours",
    thirsty: "Thirsty, root-hours",
    "below-roots": "Below roots, L per tree",
    transpiration: "Transpiration got, L per tree",
  },
  usual: "usual",
  step: "step",
  halfLayers: "half layers",
  floor: "floor",
  flips: "A finer run turns these verdicts:",
  noFlips: "No verdict between programmes turns in a finer run.",
  safe: (change: number): string =>
    `Safe step: thetaDoubtPerStep ${change}; no measure is farther than its floor from a run at 0.00125.`,
  noSafe:
    "Neither 0.005 nor 0.0025 comes within the floors of a run at 0.00125: give thetaDoubtPerStep 0.00125 or less.",
  layersFine: "Layers of half the height move no measure beyond its floor.",
  layersCoarse:
    "Layers of half the height move a measure beyond its floor: differences of that size mean nothing here.",
} as const;
