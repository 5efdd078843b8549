/** Every text of the command line that is not a number. */
export const words = {
  help: `rootledger: the water and air account of a shallow root zone under drip irrigation

Usage
  rootledger compare FILE             two to four watering programmes side by side, on each soil
  rootledger simulate FILE            one programme on one soil over a season
  rootledger ensemble FILE            the same over draws of what is unknown: bands, paired differences, verdicts
  rootledger merge FOLDER [FOLDER ..] the answer of an ensemble that was run in shards
  rootledger need FILE                litres per tree and per hectare that trees want; or by options
  rootledger plan FILE                year by year: canopy, litres, open emitters, lines, fertiliser
  rootledger sheet FILE               half a page for the grower: litres, hours, starts, what would prove it wrong
  rootledger truth [FOLDER]           every published figure beside ours
  rootledger weather FILE [FILE ...]  what was understood of a station or sensor file; several are joined by date
  rootledger validate-scenario FILE   checks a scenario or comparison file, runs nothing

Options
  --json      the whole answer as JSON
  --csv       simulate: the day table; compare: every measure, one per line; need: the spans;
              weather: its days as a weather file, or its records where it holds no weather
  --engine E  simulate, compare: bucket (fast) or richards (the referee, far slower)
  --members N --seed S --workers W  ensemble (200 draws, seed 1, one worker a core); compare draws only if asked
  --draws CSV   the same two: draws of your own, a column for each unknown, a row for each member
  --record CSV  the same two: a longer daily weather file; its other years are drawn too
  --arms all    compare: what would the answer be with another dose, start, weather, soil, engine or tree;
                or some of: daily-single, dose-above, wet-spell, slow-engine and so on, parted by commas
  --keep FOLDER compare --arms: keeps each arm's answer in a folder and finds it there next time
  --rank HOW    ensemble: which unknown matters and what to measure; screen (an order) or shares (of the
                variance; wants thousands of members)
  --shard I/N --out FOLDER   ensemble: one of N shards, its table as CSV and Parquet; merge --out FOLDER: one table of all
  --day N --language en|es --units metric|us --as text|html --members N --seed S  sheet (day 0, 40 draws)
  --answer KEY=VALUE  weather: the answer to a question about the file, as often as needed
  --help      this text
  --version   the version

Options of need, instead of a file
  --et0-mm-per-day N, or --pan-mm-per-day N with --pan-coefficient N or --crop-factor N
  --kc N --tree-spacing-m N --row-spacing-m N --canopy-m N --height-m N --hot-day-mm-per-day N --days N
  --cover whole-ground | canopy-ground | stated-cover (with --cover-fraction N) | density
          | relative-density | keller-karmeli | freeman-garzoli | decroix
  --efficiency N --leaching N --given-l-per-day N
  --weather FILE --latitude-deg=N --elevation-m N [--wind-height-m N] [--et0-method M]
              with --kc N or --crop PRESET: need by month from a daily weather or station file, in place of
              --et0-mm-per-day; --longest-gap-days N fills gaps of temperature by a line
  --scenario FILE  the given water run through that file's season: where it goes

Files are JSON; weather files that they name are read from the same folder.
Exit code 0: done; 1: faults in the input, one line each; 2: internal error.
`,
  internal: "rootledger: internal error:",
  dayWithin: "must be a day of the season, 0 to",
  seed: "seed",
  ownDraws: "own draws",
  of: "of",
  draw: "draw",
  drawsFinished: "draws finished",
  drawsFailed: "draws failed",
  inDraws: "in draws",
  notAnArm: "must be all, or some of",
  keepNeedsArms: "--keep goes with --arms only",
  armsTitle: "Beside the comparison: the same differences where something else changes",
  armColumns: {
    "below-roots-depth": "below roots,",
    "transpiration-ratio": "got,",
    thirsty: "thirsty,",
    airless: "airless,",
  },
  armsRule:
    "In brackets: no clear difference, below its floor. Doses are of the season's wanted transpiration, the same for every programme. Both engines: the first 14 days at most, from the stated tension.",
  armsHint: "Pulses against a long run: --arms all shows the same differences under other conditions.",
  ranked: {
    screen: "Which unknown matters: Morris screening",
    shares: "Which unknown matters: Sobol indices",
  },
  rankColumns: ["weight", "mostly for"],
  rankUnknown: "Unknown",
  measureIt: "What to measure, the weightiest first",
  rankRule: {
    screen:
      "Weight: mean over the answers that move by more than their floor of the unknown's share in the sum of absolute effects, each from one end of its range to the other. In the tables: mean change with its sign, and in brackets its spread, which is interaction or curvature.",
    shares:
      "Weight: mean over the answers that move by more than their floor of the unknown's share in the sum of total indices. In the tables: share of the variance that stays until the unknown is known, and in brackets what it takes away alone. Estimates; they may stray below 0.",
  },
  uncorrelated: "Unknowns are taken one by one here: correlations of the priors are not used.",
  nothingMoves: "nothing moves it beyond its floor",
  drawn: "Drawn, the same for every programme",
  verdictRule:
    "Verdict: the median is beyond the floor and the band from 5 to 95 % holds no zero. More, less: share of draws whose own difference is beyond their own floor.",
  membersNeeded: "--seed, --workers and --record of compare need --members or --draws",
  drawRows: (rows: number) => `must be at most ${rows}, the rows of the table of draws`,
  noYears: "must hold the season in another year, whole",
  seeHelp: "see rootledger --help",
  noCommand: "no command given",
  unknownCommand: "unknown command",
  fileNeeded: "a file is needed",
  oneFile: "exactly one file is needed",
  atMostOneFile: "at most one file or folder can be given",
  fileOrOptions: "need takes a file or options, one of the two",
  notAnOption: "is no option of",
  unknownEngine: "--engine must be bucket or richards",
  oneOutput: "--json and --csv exclude one another",
  noCsv: "has no --csv",
  wholeFile: "the file",
  notReadable: "must be a file that can be read",
  notJson: "must be JSON",
  notChecks: "must be a list of published checks",
  endOfFile: "the end of the file",
  atLine: "at line",
  column: "column",
  still: "still computing:",
  asks: "the file leaves this open:",
  answerBy: "answer by",
  fromFile: "in the file",
  notAnAnswer: "must be a key and a value, like date-order=dmy",
  noDaysToJoin: "must hold daily weather, or shorter records that make days, to be joined with other files",
  conflict: "must not disagree with another file",
  valid: { scenario: "a valid scenario file", comparison: "a valid comparison file" },
  programmes: "Programmes",
  decides: "decides day by day; what it gave on each soil is among the notes",
  askedFor: "asked for",
  given: "given",
  runs: "runs",
  cut: "cut or left out by",
  nothingCut: "nothing cut",
  openings: "openings of",
  opening: "opening of",
  asPlanned: "openings of different length",
  changes: "What changes",
  changesNothing: "nothing",
  together: "together, so their effects cannot be told apart",
  holds: "Holds",
  doesNotHold: "DOES NOT HOLD",
  parts: {
    part: "By part of the season, average tree",
    columns: ["days", "thirsty h", "fine h", "airless h", "below L", "wanted L", "got L"],
    depth: "Root-hours by depth",
    depthColumns: ["thirsty h", "fine h", "airless h"],
    below: "below",
  },
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
    "these are answers of a model under the assumptions listed here, not measurements; check them with a spade and a tensiometer. Root depth, limits and soil curves are the least certain. It never predicts yield or money, and it leaves out hysteresis; water draining from the lines, cracks, mulch and trapped air unless the file names them;",
  cautionsWithout: "and salt and nitrogen.",
  cautionsWith:
    "and of salt and nitrogen all that is not carried by water: sodium, chloride, gypsum, ammonium, gases, what roots take beyond the water they draw. ECe is a mean over cells, not a sample.",
  chemicals:
    "Chemicals in irrigation water: a backflow preventer and an interlock come first, and local codes and the product label rule. Nothing here is a recipe; never bypass a protection.",
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
  lines: "the lines",
  amount: "the amount of water",
  "start-time": "the start time",
  nitrogen: "the nitrogen given",
  rule: "the rule that decides",
  limits: "the limits of the pump",
} as const;

export const badgeWords = {
  "same-water": "same water",
  "same-weather": "same weather",
  "same-start": "same start",
  settled: "settled",
  "one-question": "one question at a time",
} as const;

export const needWords = {
  counts: "Ground that counts per tree",
  spacing: "spacing",
  canopy: "canopy",
  covered: "of the ground covered",
  references: {
    et0: "Reference: ET0, coefficient Kc",
    pan: "Reference: pan evaporation, coefficient Kc, pan coefficient",
    "pan-factor": "Reference: pan evaporation, coefficient a crop factor of the pan, no Kc",
  },
  net: "Net is what the tree takes, gross what must leave the emitters: efficiency",
  leaching: "leaching",
  perTree: "Per tree and day",
  treeColumns: ["", "ref. mm", "coeff.", "net L", "gross L", "hot net L", "hot gross L"],
  perHectare: "Per hectare",
  hectareColumns: ["", "days", "mm/day", "m3/day", "gross m3/day", "m3", "gross m3"],
  total: "all",
  practice: "Practice beside need",
  practiceColumns: ["", "given L", "net need L", "ratio", "surplus L", "no roots L", "beyond L"],
  practiceNote:
    "Per tree and day. No roots: falls where the tree has none. Beyond: reaches roots beyond their need; it drains, evaporates or stays. Both only where the rooted share is given. A comparison, not a verdict.",
  account: "Where it goes",
  accountColumns: ["", "given L", "wanted L", "ratio", "tree", "air", "below", "run-off", "stored"],
  accountNote:
    "The practice run through the season of the scenario file: means per tree and day, litres. Tree: transpired. Air: evaporated. Below: below the roots. Each is the flux with the water given less that of the same season without it, so the five add up to what was given. Wanted is the season's mean demand, not that of the span above.",
  cautions:
    "This is what the weather and the canopy ask for, not a schedule: coefficients come from other places, the four areas (spacing, canopy, wetted, rooted) differ, and rain, salt and the soil's air are for the season's account. Check with a spade and a tensiometer.",
} as const;

export const truthWords = {
  classes: {
    seen: "seen in print",
    memory: "from memory",
    derived: "derived: a published formula worked out by us, proves little",
    all: "all",
  },
  printed: "printed",
  ours: "ours",
  fitted: "(fitted: wider than print)",
  passes: "agrees",
  fails: "DIFFERS",
  note: "note:",
  miss: "miss:",
  notApplicable: "Not checked",
  counts: "Checks",
  countColumns: ["agree", "differ"],
  legend:
    "Seen: the figure was read in a text of the source, or in a text that quotes it. From memory: recalled, so agreement shows consistency, not that the figure is printed so. A fitted tolerance is a fence round what was found, not evidence.",
} as const;

/** Texts of the report on a station file. */
export const stationWords = {
  partedBy: "cells parted by",
  decimal: "decimal",
  thousands: "thousands parted by",
  headerLines: "lines above the records",
  dates: "dates written",
  records: "records from",
  to: "to",
  from: "from",
  every: "every",
  absent: "stamps absent between them",
  localClock: "local clock",
  stamp: { start: "stamps at the start", end: "stamps at the end", day: "one stamp a day" },
  clock: { back: "clock put back on", forward: "clock put forward on" },
  thatDay: "records that day by the clock",
  site: "Site:",
  latitude: "latitude",
  longitude: "longitude",
  windAt: "wind at",
  columnHeads: ["Column", "kept as", "unit (from)", "values", "missing", "marked"],
  notKept: "Not kept",
  assumed: "Taken for granted",
  changed: "Changed",
  rejected: "Rows not read",
  lookAt: "Look at",
  line: "line",
  lines: "lines",
  more: "more",
  days: "Days",
  daysFrom: "days from",
  nothingLeftOut: "nothing summed, left out or filled",
  noDays: "No days: the file holds no weather, or no even step that parts the day.",
  joined: "Joined",
  preview: "First records",
} as const;

/** Arms beside a comparison. */
export const armWords = {
  "as-asked": "as asked",
  "daily-single": "one run a day",
  "dose-above": "1.2 x what trees want",
  "dose-below": "0.8 x what trees want",
  "night-start": "from 22:00",
  "day-start": "from 10:00",
  "wet-spell": "with 5 days of 20 mm",
  tight: "tight soil",
  crumbly: "crumbly soil",
  "fast-engine": "14 days, fast engine",
  "slow-engine": "14 days, slow engine",
  "under-fed": "under-fed tree",
  "over-fed": "over-fed tree",
} as const;

export const armAbsenceWords = {
  "in-the-comparison": "already one of the programmes",
  "four-programmes": "left out, since the comparison has four programmes already",
  "unlike-runs": "left out, since the last programme has several kinds of run",
  "lines-stay-full": "the average tree, since lines stay full; block.lines.drainOut tells it apart",
  "no-texture": "left out, since no horizon's curve comes from a texture",
} as const;
