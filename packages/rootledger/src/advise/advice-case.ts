import { lineLayout } from "../lines/layout.js";
import { leastCommonMultiple } from "../numeric/least-common-multiple.js";
import { amountHours, type Programme } from "../programme/programme.js";
import type { PumpLimits } from "../programme/rule.js";
import { openHours } from "../programme/valve-events.js";
import { everyPart } from "../scenario/every-part.js";
import type { Lines, Scenario } from "../scenario/scenario.js";
import { createSimulation } from "../scenario/simulation.js";
import type { TreeName } from "../water/result.js";
import { type AdviceChoice, type AdviceLadders, adviceLadders } from "./advice-choice.js";
import type { TwinDraws } from "./sensor-twin.js";

/** Other lines on the same ground; what is left out stays as it is. */
export type OtherLines = Partial<Pick<Lines, "offsetsM" | "emitterSpacingM" | "emitterFlowLPerH" | "pluggedPerTree">>;

/** What is asked of `advise`. */
export interface AdviceQuestion {
  /** The block with today's programme: a calendar of one or more runs. */
  readonly scenario: Scenario;
  /** Draws of what is unknown beside the scenario as it is said, the same ones for every candidate. Left out: as said, alone. */
  readonly draws?: TwinDraws;
  /** Default the mean tree. */
  readonly tree?: TreeName;
  /** First day of the season that counts; default 7. Today's programme runs until `leadDays` before it. */
  readonly fromDay?: number;
  /** Days that every candidate runs before any is counted, so that the change itself is not judged; default `fromDay`, at most 7. */
  readonly leadDays?: number;
  /** Days that count; default 28 or the longest of 14, 12, 7 ... that fits. A whole number of today's rounds. */
  readonly days?: number;
  /** `same`, the default: only timing and place may change. `may-change`: 0.7 to 1.3 times today's water is tried too. */
  readonly water?: "same" | "may-change";
  /** Default those of today's programme. */
  readonly limits?: PumpLimits;
  /** Other lines to be tried beside today's. */
  readonly otherLines?: readonly OtherLines[];
  /** Search ends here; default 400. */
  readonly mostCandidates?: number;
}

/** A question made ready: plain data that can be sent to a worker. */
export interface AdviceCase {
  /** With today's programme, to the end of the days that count; nothing of nitrogen, which moves no water. */
  readonly scenario: Scenario;
  readonly draws?: TwinDraws;
  readonly tree: TreeName;
  readonly fromDay: number;
  readonly leadDays: number;
  readonly days: number;
  readonly water: "same" | "may-change";
  readonly limits: PumpLimits;
  /** The first is today's. */
  readonly lines: readonly Lines[];
  readonly todayLPerDay: number;
  readonly today: AdviceChoice;
  /** Whether today's programme is one of the choices; else it is held against them as it is. */
  readonly todayIsChoice: boolean;
  readonly ladders: AdviceLadders;
  readonly mostCandidates: number;
}

const usualLeadDays = 7;
const usualDays = [28, 14, 12, 7, 6, 5, 4, 3, 2, 1];
const usualMost = 400;

/**
 * Makes a question ready: days, today's water a day, the steps of each decision.
 *
 * @throws RangeError if the programme is no calendar, the days do not fit the season or today's rounds, no water is given in them,
 * or other lines do not fit the block.
 * @example adviceCase({ scenario }).days
 */
export function adviceCase(question: AdviceQuestion): AdviceCase {
  const { scenario, draws, tree = "mean", water = "same", otherLines = [], mostCandidates = usualMost } = question;
  const { season, block, programme } = scenario;
  if (programme.rule !== undefined || programme.runs.length === 0) {
    throw new RangeError("advise requires a calendar of runs as today's programme: got a rule or none");
  }
  if (!(Number.isInteger(mostCandidates) && mostCandidates > 0)) {
    throw new RangeError(`advise requires a whole number of candidates above 0: got ${mostCandidates}`);
  }
  const fromDay = question.fromDay ?? Math.min(usualLeadDays, season.days - 1);
  const leadDays = question.leadDays ?? Math.min(usualLeadDays, fromDay);
  const round = programme.runs.reduce((most, { everyDays }) => leastCommonMultiple(most, everyDays), 1);
  const left = season.days - fromDay;
  const days = question.days ?? usualDays.find((some) => some <= left && some % round === 0) ?? Number.NaN;
  if (!(Number.isInteger(fromDay) && Number.isInteger(leadDays) && leadDays >= 0 && leadDays <= fromDay && left > 0)) {
    throw new RangeError(`advise requires whole days within the season: got from ${fromDay}, lead ${leadDays}`);
  }
  if (!(Number.isInteger(days) && days > 0 && days <= left && days % round === 0)) {
    throw new RangeError(
      `advise requires up to ${left} days in whole rounds of ${round}: got ${question.days ?? "none that fit"}`,
    );
  }
  const { nitrogen: _, lines: ownLines, limits: ownLimits, ...rest } = programme;
  const { emitterFlowLPerH = block.lines.emitterFlowLPerH, ...calendar } = rest;
  const limits = question.limits ?? ownLimits ?? {};
  const own: Lines = { ...block.lines, ...ownLines, emitterFlowLPerH };
  const lines = [own, ...otherLines.map((other): Lines => ({ ...own, ...other }))];
  for (const one of lines) requireOpen(one, block.treeSpacingM);
  const { nitrogen: __, ...bare } = block;
  const limited = Object.keys(limits).length === 0 ? calendar : { ...calendar, limits };
  const ready: Scenario = {
    ...scenario,
    season: { ...season, days: fromDay + days },
    block: { ...bare, lines: own },
    programme: inLitres(limited, treeFlow(own, block.treeSpacingM)),
  };
  const todayLPerDay = givenLPerDay(ready, fromDay, days);
  if (!(todayLPerDay > 0)) throw new RangeError("advise requires water in the days that count: got none");
  const [run] = [...programme.runs].sort((a, b) => a.startH - b.startH);
  const { startH, everyDays, pulses, gapMinutes } = run;
  const single = programme.runs.length === 1;
  const today: AdviceChoice = {
    ...{ lines: 0, waterFraction: 1, startH },
    everyDays: single ? everyDays : 1,
    pulses: single ? pulses : 1,
    gapMinutes: single && pulses > 1 ? gapMinutes : 0,
  };
  return {
    ...{ scenario: ready, tree, fromDay, leadDays, days, water, limits, lines, todayLPerDay, today, mostCandidates },
    ...(draws === undefined ? {} : { draws }),
    todayIsChoice: single,
    ladders: adviceLadders(today, { days, lines: lines.length, water }),
  };
}

/** Flow of a tree's open emitters, L/h. @example treeFlow(lines, 4) */
export const treeFlow = (lines: Lines, treeSpacingM: number): number =>
  openEmitters(lines, treeSpacingM) * lines.emitterFlowLPerH;

const openEmitters = ({ offsetsM, emitterSpacingM, pluggedPerTree }: Lines, treeSpacingM: number): number =>
  lineLayout(offsetsM, treeSpacingM, emitterSpacingM).emittersPerTree - pluggedPerTree;

function requireOpen(lines: Lines, treeSpacingM: number): void {
  if (!(openEmitters(lines, treeSpacingM) > 0 && lines.emitterFlowLPerH > 0)) {
    throw new RangeError(`advise requires lines with an open emitter and a flow above 0: got ${JSON.stringify(lines)}`);
  }
}

/** Runs by their water, so that they bring the same from other lines. */
const inLitres = (programme: Programme, flowLPerH: number): Programme => ({
  ...programme,
  runs: programme.runs.map((run) => ({
    ...run,
    amount: { litresPerTree: amountHours(run.amount, flowLPerH) * flowLPerH },
  })),
});

/** What today's programme gives in the days that count, after all cuts: the valve alone tells it. */
function givenLPerDay(scenario: Scenario, fromDay: number, days: number): number {
  const simulation = createSimulation(
    { ...scenario, engine: "bucket", start: { ...scenario.start, kind: "same-state" } },
    everyPart({ engine: "bucket" }),
  );
  if (scenario.programme.limits !== undefined) while (simulation.status().kind === "running") simulation.step();
  const { valveH } = simulation.result();
  const flow = treeFlow(scenario.block.lines, scenario.block.treeSpacingM);
  return (openHours(valveH, fromDay * 24, (fromDay + days) * 24) * flow) / days;
}
