/** Every text of the command line that is not a number. */
export const words = {
  help: `rootledger: the water and air account of a shallow root zone under drip irrigation

Usage
  rootledger compare FILE             two to four watering programmes side by side, on each soil
  rootledger simulate FILE            one programme on one soil over a season
  rootledger validate-scenario FILE   checks a scenario or comparison file, runs nothing

Options
  --json      the whole answer as JSON
  --csv       simulate: the day table; compare: every measure, one per line
  --help      this text
  --version   the version

Files are JSON; weather files that they name are read from the same folder.
Exit code 0: done; 1: faults in the input, one line each; 2: internal error.
`,
  internal: "rootledger: internal error:",
  seeHelp: "see rootledger --help",
  noCommand: "no command given",
  unknownCommand: "unknown command",
  oneFile: "exactly one file is needed",
  oneOutput: "--json and --csv exclude one another",
  noCsv: "validate-scenario has no --csv",
  wholeFile: "the file",
  notReadable: "must be a file that can be read",
  notJson: "must be JSON",
  endOfFile: "the end of the file",
  atLine: "at line",
  column: "column",
  still: "still computing:",
  valid: { scenario: "a valid scenario file", comparison: "a valid comparison file" },
  programmes: "Programmes",
  openings: "openings of",
  opening: "opening of",
  asPlanned: "openings of different length",
  changes: "What changes",
  changesNothing: "nothing",
  together: "together, so their effects cannot be told apart",
  holds: "Holds",
  doesNotHold: "DOES NOT HOLD",
  trees: { mean: "average tree", "under-fed": "under-fed tree", "over-fed": "over-fed tree" },
  differences: "Differences, average tree",
  rises: "rises",
  falls: "falls",
  from: "from",
  to: "to",
  floor: "floor",
  noClear: "No clear difference",
  butUnderFed: "under-fed tree",
  notes: "Notes",
  defaults: "Defaults used",
  noDefaults: "none: the file gives every value",
  books: "Books close within",
  ofAllWater: "of all water (stored at the start and received)",
  season: "Season",
  days: "days from",
  on: "on",
  cautionsTitle: "Cautions",
  cautions:
    "these are answers of a model under the assumptions listed here, not measurements; check them with a spade and a tensiometer. Root depth, limits and soil curves are the least certain. It never predicts yield or money, and it leaves out salt, nitrogen, water draining from the lines after a stop, cracks and hysteresis.",
  legend: [
    "Root-hours are hours weighted by the share of the roots concerned. Each hour of each root is one of three: thirsty (soil drier than the pull limit, beyond which the tree draws little), airless (too little air in the pores and the soil wetter than the tension at which air returns) or fine. Severity counts how much of its uptake a root had lost in those hours; a spell is an unbroken stretch with a quarter of the roots concerned.",
    "Below roots: water that left the rooted depth downward; negative if more came up. Window: the water between air-return (100 %) and the pull limit (0 %). Under-fed tree: the one on the lowest quarter of emitters. Floor: below this size a difference is not told from the model's own error, or does not matter.",
  ],
} as const;

/** What each thing that two programmes may differ in is called. */
export const questionWords = {
  interval: "the interval between runs",
  pulses: "the number of pulses",
  gap: "the gap between pulses",
  "emitter-flow": "the emitter flow",
  amount: "the amount of water",
  "start-time": "the start time",
} as const;

export const badgeWords = {
  "same-water": "same water",
  "same-weather": "same weather",
  "same-start": "same start",
  settled: "settled",
  "one-question": "one question at a time",
} as const;
