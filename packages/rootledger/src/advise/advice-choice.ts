import type { Programme } from "../programme/programme.js";

/** One programme of the search: a calendar of one kind of run on some lines. */
export interface AdviceChoice {
  /** Place in the list of lines that are tried; 0: today's. */
  readonly lines: number;
  /** Water of a day over today's. */
  readonly waterFraction: number;
  readonly everyDays: number;
  readonly pulses: number;
  /** 0 with one pulse. */
  readonly gapMinutes: number;
  /** Clock time of the first opening, h. */
  readonly startH: number;
}

/** Values of each decision, rising; a step goes from one to the next. */
export interface AdviceLadders {
  readonly lines: readonly number[];
  readonly waterFraction: readonly number[];
  readonly everyDays: readonly number[];
  readonly pulses: readonly number[];
  readonly gapMinutes: readonly number[];
  readonly startH: readonly number[];
}

/** Steps of the search, our choice, no source: halves and doubles where time matters, two hours by the clock, a tenth of the water. */
const usualPulses = [1, 2, 3, 4, 6, 8];
const usualGaps = [30, 60, 90, 120, 180, 240, 360];
const usualIntervals = [1, 2, 3, 4, 5, 6, 7];
const usualWater = [0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3];
const startStepH = 2;
/** Pause of a split run where today's has none, minutes. Our choice. */
const usualGapMinutes = 60;

/**
 * The steps of each decision about today's programme: its own values are among them, intervals are those that go into the days
 * counted, so that each brings the same water within them.
 *
 * @example adviceLadders({ lines: 0, waterFraction: 1, everyDays: 1, pulses: 1, gapMinutes: 0, startH: 6 }, { days: 14, lines: 1, water: "same" }).everyDays // [1, 2, 7]
 */
export function adviceLadders(
  today: AdviceChoice,
  { days, lines, water }: { readonly days: number; readonly lines: number; readonly water: "same" | "may-change" },
): AdviceLadders {
  const withOwn = (usual: readonly number[], own: number): number[] =>
    [...new Set([...usual, own])].sort((a, b) => a - b);
  return {
    lines: Array.from({ length: lines }, (_, i) => i),
    waterFraction: water === "same" ? [1] : usualWater,
    everyDays: withOwn(usualIntervals, today.everyDays).filter((every) => days % every === 0),
    pulses: withOwn(usualPulses, today.pulses),
    gapMinutes: withOwn(usualGaps, today.pulses > 1 ? today.gapMinutes : usualGapMinutes),
    startH: Array.from({ length: 24 / startStepH }, (_, i) => (today.startH + i * startStepH) % 24).sort(
      (a, b) => a - b,
    ),
  };
}

/** What tells choices apart. @example choiceKey({ lines: 0, waterFraction: 1, everyDays: 1, pulses: 2, gapMinutes: 60, startH: 6 }) // "0 1 1 2 60 6" */
export const choiceKey = ({ lines, waterFraction, everyDays, pulses, gapMinutes, startH }: AdviceChoice): string =>
  [lines, waterFraction, everyDays, pulses, gapMinutes, startH].join(" ");

/** Another number of pulses: a single run has no gap, a split one takes today's or an hour. @example withPulses(choice, 2, today).gapMinutes */
export function withPulses(choice: AdviceChoice, pulses: number, today: AdviceChoice): AdviceChoice {
  const first = today.pulses > 1 ? today.gapMinutes : usualGapMinutes;
  return { ...choice, pulses, gapMinutes: pulses === 1 ? 0 : choice.pulses === 1 ? first : choice.gapMinutes };
}

/**
 * All choices one step away in one decision; the clock goes round, other lines are one step each.
 *
 * @example neighboursOf(choice, ladders, today).length
 */
export function neighboursOf(choice: AdviceChoice, ladders: AdviceLadders, today: AdviceChoice): AdviceChoice[] {
  const beside = (ladder: readonly number[], own: number): number[] => {
    const at = ladder.indexOf(own);
    return [ladder[at - 1], ladder[at + 1]].filter((value) => value !== undefined);
  };
  const { startH } = ladders;
  const at = startH.indexOf(choice.startH);
  const clock = startH.length < 2 ? [] : [startH[(at + 1) % startH.length], startH.at(at - 1) ?? choice.startH];
  return [
    ...beside(ladders.waterFraction, choice.waterFraction).map((waterFraction) => ({ ...choice, waterFraction })),
    ...beside(ladders.everyDays, choice.everyDays).map((everyDays) => ({ ...choice, everyDays })),
    ...beside(ladders.pulses, choice.pulses).map((pulses) => withPulses(choice, pulses, today)),
    ...(choice.pulses === 1 ? [] : beside(ladders.gapMinutes, choice.gapMinutes)).map((gapMinutes) => ({
      ...choice,
      gapMinutes,
    })),
    ...clock.map((hour) => ({ ...choice, startH: hour })),
    ...ladders.lines.filter((lines) => lines !== choice.lines).map((lines) => ({ ...choice, lines })),
  ];
}

/** Decisions in which two choices differ. @example changesBetween(today, choice) // ["pulses", "gapMinutes"] */
export const changesBetween = (a: AdviceChoice, b: AdviceChoice): (keyof AdviceChoice)[] =>
  (Object.keys(a) as (keyof AdviceChoice)[]).filter((key) => a[key] !== b[key]);

/** The calendar of a choice; its name is its numbers, words are made elsewhere. @example programmeOf(choice, 133).runs[0].amount // { litresPerTree: 133 } */
export function programmeOf(choice: AdviceChoice, todayLPerDay: number): Programme {
  const { everyDays, pulses, gapMinutes, startH, lines } = choice;
  const litresPerTree = todayLPerDay * choice.waterFraction * everyDays;
  const clock = `${String(Math.floor(startH)).padStart(2, "0")}:${String(Math.round((startH % 1) * 60)).padStart(2, "0")}`;
  const split =
    pulses === 1 ? `${litresPerTree.toPrecision(4)} L` : `${pulses} x ${(litresPerTree / pulses).toPrecision(4)} L`;
  const gap = pulses === 1 ? "" : `, ${gapMinutes} min apart`;
  return {
    name: `/${everyDays} d, ${clock}, ${split}${gap}${lines === 0 ? "" : `, lines ${lines}`}`,
    runs: [{ startH, everyDays, firstDay: 0, pulses, gapMinutes, amount: { litresPerTree } }],
  };
}
