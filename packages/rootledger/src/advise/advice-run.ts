import { drawMaker } from "../chance/draw.js";
import { editComparison } from "../chance/edit.js";
import type { MemberRun } from "../chance/member-run.js";
import { scenarioOf } from "../compare/compare.js";
import { floorOf } from "../compare/floors.js";
import type { Programme } from "../programme/programme.js";
import { openHours } from "../programme/valve-events.js";
import { everyPart } from "../scenario/every-part.js";
import type { Lines, Scenario } from "../scenario/scenario.js";
import { createSimulation, type Snapshot } from "../scenario/simulation.js";
import { column, measure, type Result, type TreeName } from "../water/result.js";
import { type AdviceCase, treeFlow } from "./advice-case.js";

/** One programme on some lines, to be run over every draw. */
export interface AdvicePoint {
  readonly programme: Programme;
  /** Place in the lines of the case. */
  readonly lines: number;
}

/** Programmes to be run; plain data that can be sent to a worker. */
export interface AdviceBatch {
  readonly ready: AdviceCase;
  readonly points: readonly AdvicePoint[];
}

/** What a member's numbers mean, over the days that count. Floors are the smallest differences that say something. */
export const adviceNumbers = {
  thirsty: 0,
  airless: 1,
  belowRootsL: 2,
  starts: 3,
  valveL: 4,
  /** For programmes that differ in pulses and gaps alone: thirsty, airless, below roots. */
  pulseFloors: 5,
  /** For any others. */
  otherFloors: 8,
} as const;
const adviceNumbersSize = 11;

/** Draws of a case, the scenario as said counted as the first. @example drawsOf(ready) // 1 */
export const drawsOf = ({ draws }: Pick<AdviceCase, "draws">): number => 1 + (draws?.members ?? 0);

/**
 * Makes the function that runs one member of a batch: member = draw * points + point. Every programme of a draw goes on from one
 * state, that of today's programme on its lines at the day of the change.
 *
 * @throws RangeError as `drawMaker`; the returned function, if a run fails on the way.
 * @example adviceRun({ ready, points })(0)[adviceNumbers.thirsty]
 */
export function adviceRun({ ready, points }: AdviceBatch, starts: AdviceStarts = adviceStarts(ready)): MemberRun {
  return (member) => {
    const point = points[member % points.length];
    const draw = Math.floor(member / points.length);
    return numbersOf(advisedSeason(starts(draw, point.lines), point.programme, ready), point.lines, ready);
  };
}

/** Block and weather of one draw on some lines, and the state at the day of the change. */
export interface AdviceStart {
  readonly scenario: Scenario;
  readonly snapshot: Snapshot;
}

/** How the runs of an advice begin. */
export type AdviceStarts = (draw: number, lines: number) => AdviceStart;

/** Finds each start once and keeps it. @example adviceStarts(ready)(0, 0).snapshot.hour */
export function adviceStarts(ready: AdviceCase, trees: readonly TreeName[] = treesIn(ready)): AdviceStarts {
  const drawOf = ready.draws === undefined ? undefined : drawMaker(ready.draws.source);
  const kept = new Map<string, AdviceStart>();
  return (draw, linesAt) => {
    const key = `${draw} ${linesAt}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const said = onLines(ready.scenario, ready.lines[linesAt]);
    const drawn = draw === 0 || drawOf === undefined ? said : edited(said, ready, drawOf(draw - 1));
    const simulation = createSimulation(drawn, { ...everyPart(drawn), trees });
    const untilH = (ready.fromDay - ready.leadDays) * 24;
    while (simulation.status().kind === "running" && simulation.hour() < untilH) simulation.step();
    const { status } = simulation.result();
    if (status.kind === "failed") throw new RangeError(`advise requires a block that can be run: ${status.message}`);
    const start = { scenario: drawn, snapshot: simulation.snapshot() };
    kept.set(key, start);
    return start;
  };
}

function edited(scenario: Scenario, ready: AdviceCase, draw: ReturnType<ReturnType<typeof drawMaker>>): Scenario {
  const { soil, programme, ...common } = scenario;
  const comparison = editComparison(
    { ...common, remark: "", soils: [soil], programmes: [programme] },
    draw,
    ready.draws?.weatherYears,
  );
  return scenarioOf(comparison, comparison.soils[0], comparison.programmes[0]);
}

const onLines = (scenario: Scenario, lines: Lines): Scenario => ({ ...scenario, block: { ...scenario.block, lines } });

/** A valve with limits is decided by the mean tree. */
const treesIn = ({ tree }: AdviceCase): readonly TreeName[] => (tree === "mean" ? ["mean"] : [tree, "mean"]);

/** A season under today's programme until the change, then under another. @throws RangeError if the run fails. @example advisedSeason(start, programme, ready).measures */
export function advisedSeason(
  { scenario, snapshot }: AdviceStart,
  programme: Programme,
  ready: AdviceCase,
  trees: readonly TreeName[] = treesIn(ready),
): Result {
  const { limits } = ready;
  const own = Object.keys(limits).length === 0 ? programme : { ...programme, limits };
  const changed: Scenario = { ...scenario, programme: own, start: { ...scenario.start, kind: "same-state" } };
  const simulation = createSimulation(changed, { ...everyPart(changed), trees });
  simulation.restore(snapshot);
  while (simulation.status().kind === "running") simulation.step();
  const result = simulation.result();
  if (result.status.kind !== "finished") throw new RangeError(`${programme.name}: the run did not end`);
  return result;
}

function numbersOf(result: Result, linesAt: number, ready: AdviceCase): Float64Array {
  const { fromDay, days, scenario } = ready;
  const { valveH } = result;
  const fromH = fromDay * 24;
  const toH = (fromDay + days) * 24;
  const numbers = new Float64Array(adviceNumbersSize);
  numbers.set(fourOf(result, ready, 0));
  const flow = treeFlow(ready.lines[linesAt], scenario.block.treeSpacingM);
  numbers[adviceNumbers.valveL] = openHours(valveH, fromH, toH) * flow;
  const ofHours = days / result.days.rows;
  const applied = measure(result, "applied").values[0];
  const ofWater = applied > 0 ? sumOver(result, "applied", fromDay, days, 0) / applied : 0;
  for (const [at, question] of [
    [adviceNumbers.pulseFloors, "pulses"],
    [adviceNumbers.otherFloors, "interval"],
  ] as const) {
    const floor = (id: string): number => floorOf(id, result, scenario.soil, [question], 0).size;
    numbers[at] = floor("thirsty") * ofHours;
    numbers[at + 1] = floor("airless") * ofHours;
    numbers[at + 2] = floor("below-roots") * ofWater;
  }
  return numbers;
}

/** The four measures over the days that count, of one tree of a result. @example fourOf(result, ready, 0)[adviceNumbers.starts] */
export function fourOf(
  result: Result,
  { fromDay, days }: Pick<AdviceCase, "fromDay" | "days">,
  tree: number,
): number[] {
  const { valveH } = result;
  let starts = 0;
  for (let e = 0; e < valveH.length; e += 2)
    if (valveH[e] >= fromDay * 24 && valveH[e] < (fromDay + days) * 24) starts++;
  const sum = (name: string): number => sumOver(result, name, fromDay, days, tree);
  return [sum("thirsty"), sum("airless"), sum("belowRoots"), starts];
}

/** Sum of a column of the days of one tree. @example sumOver(result, "wanted", 7, 14, 0) */
export function sumOver(result: Result, name: string, fromDay: number, days: number, tree: number): number {
  const { values } = column(result.days, name);
  const trees = result.trees.length;
  let sum = 0;
  for (let day = fromDay; day < fromDay + days; day++) sum += values[day * trees + tree];
  return sum;
}
