import { amount, whole } from "../number-format.js";
import { truthTopics } from "./truth-topics.js";

/** Words of the page of published checks. */
export const truthPage = {
  heading: "Published checks",
  title: (all: number, wrong: number): string =>
    wrong === 0
      ? `${whole(all)} published checks, all agree`
      : `${whole(all)} published checks, ${amount(wrong)} do not agree`,
  verified: (seen: number, memory: number, derived: number): string =>
    `${whole(seen)} figures were read in print, ${whole(memory)} come from memory and need a second reader, ${whole(derived)} were worked out from printed ones.`,
  what: "Each figure was printed by somebody else. The tolerance is half a printed digit unless a reason is given in the data. They were run when this page was built, by the same library that computes here.",
  search: "Find a title, a source or a topic",
  found: (count: number): string => `${whole(count)} found`,
  fetching: "Fetching the checks",
  missing: "The checks could not be fetched; they are beside the page and come when it is online again.",
  again: "Try again",
  agree: (agree: number, all: number): string =>
    agree === all ? `${whole(all)} ${all === 1 ? "agrees" : "agree"}` : `${whole(agree)} of ${whole(all)} agree`,
  columns: ["Check", "Figure", "Printed", "Ours", "Tolerance", "Source"],
  how: { seen: "seen in print", memory: "from memory", derived: "worked out" } as Readonly<Record<string, string>>,
  misses: "does not agree",
  engines: "How far the fast engine is from physics",
  enginesWhat:
    "The page computes with a fast engine. Beside it stands a slow one that solves Richards’ equation on finer cells. What a change of programme does was computed by both, on twelve textures, three structures and two layered soils; the largest distances are below. A difference smaller than these is called “no clear difference” on the page Compare. Both engines are ours: this says how far they are from each other, not from your field.",
  enginesCaption: "Largest distance in what a change of programme does",
  soils: "Soils",
  change: "Change",
  groups: { coarse: "coarse", medium: "medium", fine: "fine", tight: "tight structure", layered: "layered" },
  kinds: { interval: "another interval", pulses: "split into pulses" },
  topics: truthTopics as Readonly<Record<string, string | undefined>>,
  errors: {
    thirstyTime: "thirsty, of the hours",
    airlessTime: "airless, of the hours",
    drainage: "below roots, of the water",
    evaporation: "evaporated, of the water",
    uptake: "drunk, of the demand",
  },
};

export type TruthPageWords = typeof truthPage;
