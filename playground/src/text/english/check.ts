import { amount } from "../number-format.js";
import { depthText } from "../quantity.js";

/** Words of the check by the slow engine. */
export const check = {
  heading: "Check with physics",
  start: (days: string): string => `Check ${days} with physics`,
  again: "Check again",
  what: "Richards’ equation on finer cells, from the same soil on the first day. Slow: it runs beside the page, which stays usable.",
  waiting: "After the season is computed.",
  cancel: "Stop",
  running: (soil: string, letter: string, arm: number, arms: number): string =>
    `${soil}, ${letter}: run ${arm} of ${arms}`,
  remaining: (seconds: number): string =>
    seconds < 90 ? `about ${amount(seconds, 1)} s left` : `about ${amount(seconds / 60, 1)} min left`,
  starting: "starting",
  stopped: "Stopped. What was finished is shown.",
  failed: "The check ended early",
  stale: "From before your change; check again.",
  took: (seconds: number, runs: number): string => `${runs} runs in ${amount(seconds, 2)} s.`,
  title: (soil: string, beyond: number, all: number): string => {
    if (all === 0) return `${soil}: nothing to hold against physics yet`;
    if (beyond === 0)
      return `${soil}: physics agrees on what each change does, within the floor, in all ${all} figures`;
    return `${soil}: physics is further away than the floor in ${beyond} of ${all} figures`;
  },
  days: (from: string, to: string): string => `${from} to ${to}, average tree, both engines from the same soil.`,
  noBalance: (letter: string, when: string): string =>
    `${letter} failed: Richards’ equation found no balance at ${when}; its figures are left out.`,
  valuesCaption: "Each programme by the fast engine and by physics",
  changesCaption: "What a change of programme does",
  measure: "Measure",
  fast: "fast",
  physics: "physics",
  difference: "difference",
  change: "Change",
  apart: "apart",
  floor: "floor",
  within: "Within the floor?",
  yes: "within",
  no: "beyond",
  pair: (from: string, to: string): string => `${from} to ${to}`,
  key: "diamonds: physics",
  staleKey: "diamonds: physics, before your change",
  summary: (low: number, high: number): string => ` By physics: from ${amount(low)} to ${depthText(high)}.`,
  hours: (letter: string): string => `${letter}, fast above, physics below`,
};
