import { amount } from "../number-format.js";
import { classHandout } from "./class-handout.js";

const hoursOf = (hours: number): string => (hours < 48 ? `${amount(hours, 2)} h` : `${amount(hours / 24, 2)} days`);

/** Words of the page of lessons and of the charts that it brings. */
export const classPage = {
  ...classHandout,
  heading: "Lessons",
  lesson: "Lesson",
  keys: "Keys: arrows move the slider, 1 to 6 vote, D digs, T reads the tensiometer, space reveals, S flips the switch, comma and full stop move the hour, F freezes, R starts again, N and P change the lesson. They work while the lesson has the focus.",
  stage: (title: string): string => `Lesson: ${title}`,
  votes: "Votes of the class",
  vote: (option: string, count: number): string => `${option}: ${amount(count)}`,
  guess: "guess",
  guessAt: (point: string): string => `The class guesses ${point}.`,
  hidden: "The answer is hidden until the class has said what it expects.",
  reveal: "Reveal",
  spade: "Dig with the spade",
  spadeLocked: "Spade: vote first",
  tensiometer: "Read the tensiometer",
  tensiometerLocked: "Tensiometer: dig first",
  tensiometerSays: (tension: string, depthCm: number): string =>
    `Tensiometer at ${amount(depthCm)} cm, scale 0 to 80 kPa: ${tension}`,
  drinks: (drinks: string, wants: string): string => `Drinks ${drinks} of the ${wants} it wants today.`,
  freeze: "Freeze this",
  thaw: "Let go of the frozen one",
  reset: "Start again",
  next: "Next lesson",
  previous: "Previous lesson",
  computing: (done: number, all: number): string => `Computing ${amount(done)} of ${amount(all)}`,
  failed: "This lesson could not be computed",
  failedAt: (column: string, point: string): string =>
    point === "" ? `Column “${column}”:` : `Column “${column}” at “${point}”:`,
  crashed:
    "The part of the page that computes has stopped. Votes, guess and lesson are still here. Compute again; if it stops once more, reload the page.",
  again: "Compute again",
  lost: (id: string): string =>
    `The link names the lesson “${id}”, which is not on this device. Open its file below; meanwhile the first lesson is shown.`,
  notReckoned: (what: string): string =>
    `Not reckoned in this scenario: ${what}. Salt needs block.salt, nitrogen needs block.nitrogen.`,
  tree: "A wilting tree; its soil is hidden",
  frozenAt: (point: string): string => `Frozen: ${point}`,
  nowAt: (point: string): string => `Now: ${point}`,
  sweepSummary: (name: string, values: string): string => `${name}: ${values}.`,
  measures: {
    thirsty: "Thirsty root-hours",
    airless: "Airless root-hours",
    "airless-at-20": "Hours without air at 20 cm",
    "longest-airless": "Longest spell without air",
    given: "Water given",
    "below-roots": "Water below the roots",
    transpiration: "Water the tree drank",
    "transpiration-share": "Share drunk of what the tree wants",
    "drunk-that-day": "Water drunk on the day shown",
    evaporation: "Water evaporated",
    runoff: "Water run off",
    "window-litres": "Water the soil can lend",
    "on-roots": "Litres on roots, per day",
    "on-nothing": "Litres on nothing, per day",
    "nitrogen-given": "Nitrogen given",
    "nitrogen-taken-up": "Nitrogen the tree took",
    "nitrogen-below-roots": "Nitrogen below the roots",
    "nitrogen-rootless-ground": "Nitrogen on ground without roots",
    "root-ece-that-day": "Salt round the roots on the day shown, ECe",
    "salt-held-back": "Root-hours held back by salt",
  },
  inDays: (name: string, days: number): string => `${name} in ${days === 1 ? "one day" : `${amount(days)} days`}`,
  memory: "Roots without air, hour by hour",
  memoryKey: "Bar: a pulse. Dot: air already missing when it begins.",
  memorySummary: (shares: string): string =>
    `Roots without air when each pulse of the day begins, in order: ${shares}.`,
  leakEdge: "Below the roots",
  leakGrams: (grams: string): string => `${grams} g nitrogen`,
  leakDot: (grams: string): string => `one dot: ${grams} g`,
  leakSummary: (litres: string, grams: string | undefined): string =>
    grams === undefined
      ? `${litres} fell below the roots.`
      : `${litres} fell below the roots, and ${grams} g of nitrogen with it.`,
  damage: "Hours without air, and where sources see harm",
  span: hoursOf,
  spanRange: (from: number, to: number): string => `${hoursOf(from)} to ${hoursOf(to)}`,
  damageSummary: (from: number, to: number, spells: readonly string[]): string =>
    `Sources see the first harm after ${hoursOf(from)} and the last of them by ${hoursOf(to)}. Longest spell without air: ${spells.join("; ")}.`,
  damageVerdict: {
    below: "shorter than any spell in which a source saw harm.",
    within: "inside the band: some sources saw harm after so long, others did not.",
    beyond: "longer than every spell that a source calls harmless.",
  },
  damageRemark:
    "Sources differ more than tenfold: this is a band, not a clock. Root rot in warm soil moves it from days to hours (worst at 21 to 27 °C: Zentmyer 1981).",
  saw: (_source: string, saw: string): string => saw,
  table: "Numbers of the lesson",
  open: "Open a lesson file of your own",
  openHint: "A JSON file in the format of the lessons that come with the page. It stays on this device.",
  template: "Download a lesson to start from",
  notKept: {
    full: "The lesson is open, but there is no room to keep it on this device: open its file again next time.",
    forbidden: "The lesson is open, but this browser may not keep anything: open its file again next time.",
  },
  forget: (title: string): string => `Remove “${title}” from this device`,
  faults: "This file is not a lesson; the lesson on screen has not changed.",
  faultHead: ["Where", "What stands there", "What the rule is"],
  wholeFile: "the file",
  nothing: "nothing",
  tooLarge: (kB: number): string => `${amount(kB)} kB`,
  rules: {
    "not-json": "must be JSON that can be read",
    missing: "must be given",
    "unknown-key": "is not a key of a lesson; look at the help below",
    "own-value": "must be as the help below says",
    "one-engine": "must be left out, or bucket: the slow engine would keep the class waiting",
    kind: (expected: string): string => `must be of the kind ${expected}`,
    "one-of": (expected: string): string => `must be one of ${expected}`,
    form: (expected: string): string => `must have the form ${expected}`,
    "at-least": (limit: number, of: string): string => `must be at least ${amount(limit)}${sizeOf(of)}`,
    "at-most": (limit: number, of: string): string => `must be at most ${amount(limit)}${sizeOf(of)}`,
  },
  help: "How to write a lesson",
  helpText:
    "A lesson is a scenario of the demo block with changes laid over it: first the lesson's own, then the column's, then the point's, last the switch's. Fields of a scenario have the names that the README lists; lists are replaced whole. Texts are one string, or one in English and one in Spanish.",
  helpRows: [
    ["format, id", "1, and a short name in small letters, digits and dashes; a lesson of the same id is replaced"],
    [
      "title, question, reveal, key",
      "words: the question first, the reveal after the class has spoken, the key for the trainer's handout",
    ],
    [
      "predict",
      "{ kind: point }: the class guesses with the slider; { kind: choice, options }: it votes for one of two to six",
    ],
    ["scenario", "what all runs share, for instance soil, season, programme, start"],
    ["columns", "one to four, side by side: name, change, tree (mean, under-fed, over-fed), rain { date: mm }"],
    ["slider, points", "name of the slider and one to sixteen stops: label, change, rain"],
    ["switch", "label, change; or rootRot: true to move the damage band"],
    ["pictures", "tree, section, storage, window, plan, pulses, leak, damage"],
    ["measures", "one to three of the names below; the first is written large"],
    [
      "hour, view, soilTemperatureC",
      "hour that pictures show, days of the storage picture, warmth for the damage band",
    ],
  ],
};

function sizeOf(of: string): string {
  const names: Readonly<Record<string, string>> = {
    string: " letters",
    array: " entries",
    days: " days in all points, columns and the switch together",
    file: " kB",
  };
  return names[of] ?? "";
}

export type ClassPageWords = typeof classPage;
