import type { SheetWords } from "./sheet-words.js";

/** The sheet in English. */
export const sheetEnglish: SheetWords = {
  title: "$block: watering from $from to $to",
  holds: "After $to this sheet no longer holds.",
  each: "$litres for each tree, every time ($depth; $area).",
  everyDay: "Every day.",
  everyDays: "Every $days days: $dates.",
  onDates: "On these days: $dates.",
  water: "Water",
  openingOne: "Open at $start, for $length.",
  openings: "$count times a day: $list.",
  stop: "Never later than $stop.",
  stopNextDay: "Never later than $stop the next day.",
  stopLater: "Never later than $stop, $later days on.",
  emittersAll: "All $open emitters of the tree open, $flow each.",
  emittersPlugged: "$open emitters open at each tree, $plugged plugged, $flow each.",
  stopIfTitle: "Stop, and call, if",
  stopIf: {
    wilting: "the tree wilts while the soil at $shallow is wet: do not add water, dig first;",
    airless: "the tensiometer at $shallow still reads below $air when the next run is due: wait until air is back;",
    thirsty: "the tensiometer at $shallow stays above $pull for two days: the tree is thirsty;",
    thirstier: "the tensiometer at $shallow passes $driest before a run: drier than this programme should leave it;",
    standing: "water runs off or stands on the ground an hour after the run, or one tree gets none.",
  },
  expectedBeyond: {
    thirsty:
      "Before a run the soil at $shallow is expected beyond $pull, where the tree pulls little: ask whether to water more often.",
    airless:
      "When a run is due the soil at $shallow is expected below $air, still short of air: ask whether to water less or less often.",
  },
  provesTitle: "What you should find. A reading outside proves this sheet wrong",
  proves: "$depth deep, $distance from the line, $when: most likely $middle, $low to $high",
  provesThen:
    "If a reading lies outside on two days running, change nothing but call: soil, roots or water differ from what was assumed.",
  when: {
    "before-run": "just before the first run",
    "after-run": "two hours after the last run",
    "next-morning": "next morning",
  },
  beyondTensiometer: " (a tensiometer ends at $end)",
  basis: "Tree: $tree. Soil: $soil. Weather used: $weather, $wfrom to $wto. Programme: $programme.",
  cautions: [
    "Numbers are ranges from a model of one average tree; the spade decides. Change one thing at a time and look again within days.",
    "Water rights, nitrate rules, pumps, electricity and anything injected into the lines: local codes and licensed practice come first; guard against backflow.",
  ],
  saltyWater:
    "Water of EC $ec dS/m: its salt stays where little drains below the roots. Have water and soil analysed; leaching and local advice decide.",
  notesTitle: "Read here",
  adviser: "Adviser:",
};
