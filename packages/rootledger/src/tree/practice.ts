import { type NeedQuestion, waterNeed } from "./water-need.js";

/** What growers give, as they say it, and the tree and span it is for. */
export interface Practice {
  readonly name: string;
  readonly litresPerTreePerDay: number;
  /** Canopy at that age, m; left out, that of the question. */
  readonly canopyDiameterM?: number;
  /** Name of a span of the question; left out, the one with the largest need. */
  readonly period?: string;
  /** Share of this water that falls where the tree has roots; left out, it is not known and not split. */
  readonly rootedShare?: number;
}

/** A practice beside the computed need. */
export interface PracticeRatio {
  readonly name: string;
  readonly givenL: number;
  readonly neededL: number;
  /** Given over needed. */
  readonly ratio: number;
  /** Given less needed; negative where the tree gets less than it wants. */
  readonly surplusL: number;
  /** Where the given water goes, where the rooted share is known: taken by the tree, on ground without roots, and beyond the need. */
  readonly split?: { readonly takenL: number; readonly withoutRootsL: number; readonly beyondNeedL: number };
}

/**
 * A practice beside the computed net need of a day. What lies beyond the need on rooted ground drains below the roots, evaporates or
 * stays in the soil; only a season's account can tell which. It is a comparison, not a verdict: a young tree's ball dries
 * fast, and practice allows for it.
 *
 * @example practiceRatio({ name: "first year", litresPerTreePerDay: 8 }, 4).ratio // 2
 */
export function practiceRatio(practice: Practice, neededL: number): PracticeRatio {
  const { name, litresPerTreePerDay: givenL, rootedShare } = practice;
  const common = { name, givenL, neededL, ratio: givenL / neededL, surplusL: givenL - neededL };
  if (rootedShare === undefined) return common;
  const onRootsL = rootedShare * givenL;
  const takenL = onRootsL < neededL ? onRootsL : neededL;
  return { ...common, split: { takenL, withoutRootsL: givenL - onRootsL, beyondNeedL: onRootsL - takenL } };
}

/**
 * Practices, by age for instance, each beside the need of its own canopy and span.
 *
 * @throws RangeError where `waterNeed` does, or if a practice names no span of the question.
 * @example practiceRatios(question, [{ name: "first year", litresPerTreePerDay: 8, canopyDiameterM: 1 }])[0].ratio
 */
export function practiceRatios(question: NeedQuestion, practices: readonly Practice[]): readonly PracticeRatio[] {
  return practices.map((practice) => {
    const { canopyDiameterM, period } = practice;
    const tree = canopyDiameterM === undefined ? question.tree : { ...question.tree, canopyDiameterM };
    const needs = waterNeed({ ...question, tree }).periods.filter(
      ({ name }) => period === undefined || name === period,
    );
    if (needs.length === 0) throw new RangeError(`practiceRatios requires a span of the question: got ${period}`);
    return practiceRatio(practice, Math.max(...needs.map(({ meanDay }) => meanDay.netLPerTree)));
  });
}
