import { applyLimits } from "../programme/apply-limits.js";
import { type Decider, deciderOf, settleOwed } from "../programme/decider.js";
import { type EmitterSchedule, emitterSchedule, type LineDrain } from "../programme/emitter-schedule.js";
import { type Morning, memoryLength } from "../programme/morning.js";
import { sensorCell } from "../programme/sensor-cell.js";
import { cm3PerL, mmPerCm, tensionFromHead } from "../units.js";
import { cellValues, lookUpInto } from "../water/ground.js";
import type { WateringBook } from "../water/watering-book.js";
import { forcingBreaks, rainRate, sunShareOf } from "./demand.js";
import type { Prepared } from "./ground-of.js";
import { cycleLength, longestCycleDays } from "./settle.js";
import { supplyOf } from "./supply.js";
import { momentsUpTo, type TreeRun, timelineOf } from "./tree-run.js";
import type { DecidedParts, Valve, ValveMaker, ValvePlace } from "./valve.js";

/** Sums of the mean tree since the last decision. */
const sumPlaces = { transpiredCm3: 0, evaporatedCm3: 1, rootedRainCm3: 2, rainMm: 3, wantedCm3: 4 } as const;

/**
 * The valve of a programme with a rule or limits. Once a day, at a whole hour, the programme asks for runs from the state of
 * the mean tree; limits cut them; what is left is appended to the openings and the timeline made for one day.
 *
 * @throws RangeError if the mean tree is not among the trees, the sensor lies outside the cells, or as `deciderOf`.
 * @example createSimulation(scenario, { valve: decidedValve })
 */
export const decidedValve: ValveMaker = (at: ValvePlace): Valve => {
  const { scenario, prepared, demand } = at;
  const { programme, season, block } = scenario;
  const { grid, ground, roots, treeFlowLPerH } = prepared;
  const mean = at.trees.indexOf("mean");
  if (mean < 0)
    throw new RangeError(
      `simulate requires the mean tree beside a programme that decides: got trees ${at.trees.join(", ")}`,
    );
  const injection = at.solutes?.injection;
  const decider = deciderOf(programme, { startDate: season.startDate, ground, roots, treeFlowLPerH });
  if (programme.rule?.kind === "tension") sensorCell(grid, prepared.lineAtCm[0], programme.rule);
  const rootedGround = rootedGroundFraction(prepared);
  const endH = season.days * 24;
  const sums = new Float64Array(Object.keys(sumPlaces).length);
  const memory = new Float64Array(memoryLength);
  let book: WateringBook = emptyBook;

  /** Schedule, timeline and supplies from an hour to the next decision. */
  function ready(fromH: number, trees: readonly TreeRun[]): void {
    const toH = Math.min(nextDecisionH(decider, fromH), endH);
    valve.schedule = scheduleFrom(valve.valveH, fromH, treeFlowLPerH, block.lines.drainOut);
    const breaks = [...forcingBreaks(demand, Math.floor(fromH / 24), Math.ceil(toH / 24))];
    breaks.push(...(injection?.eventsH() ?? at.solutes?.breaksH ?? []));
    valve.timeline = timelineOf(valve.schedule.momentsH, breaks, fromH, toH);
    valve.place = 0;
    for (const tree of trees) tree.supply = supplyOf(tree.name, valve.schedule, prepared, block.lines);
  }

  function morningAt(hour: number, tree: TreeRun): Morning {
    const theta = Float64Array.from(tree.state.theta);
    const litres = (place: number): number => sums[place] / cm3PerL;
    return {
      day: Math.floor(hour / 24),
      hour,
      theta,
      tensionKPa: (depthCm, fromLineCm) => {
        const values = cellValues(grid.cells);
        lookUpInto(values, ground, theta);
        return tensionFromHead(values.headCm[sensorCell(grid, prepared.lineAtCm[0], { depthCm, fromLineCm })]);
      },
      rainMm: sums[sumPlaces.rainMm],
      rootedRainL: litres(sumPlaces.rootedRainCm3),
      wantedL: litres(sumPlaces.wantedCm3),
      transpiredL: litres(sumPlaces.transpiredCm3),
      evaporatedL: litres(sumPlaces.evaporatedCm3),
      valveH: valve.valveH,
      memory,
    };
  }

  function decide(hour: number, tree: TreeRun): void {
    const morning = morningAt(hour, tree);
    const asked = decider.ask(morning);
    const { openingsH, runsH, givenRuns, cuts } = applyLimits(asked, programme.limits ?? {}, {
      day: morning.day,
      rainMm: morning.rainMm,
      valveH: valve.valveH,
      untilH: programme.rule === undefined ? Number.POSITIVE_INFINITY : morning.day * 24 + 24 + programme.rule.startH,
      treeFlowLPerH,
      groundM2: prepared.groundCm2 / 1e4,
    });
    let openH = 0;
    for (let e = 0; e < openingsH.length; e += 2) openH += openingsH[e + 1] - openingsH[e];
    settleOwed(programme.rule, memory, openH * treeFlowLPerH);
    if (openingsH.length > 0) valve.valveH = Float64Array.from([...valve.valveH, ...openingsH]);
    injection?.open(morning.day, runsH);
    if (asked.length > 0) {
      book = {
        askedRuns: book.askedRuns + asked.length,
        givenRuns: book.givenRuns + givenRuns,
        askedMinutes: book.askedMinutes + asked.reduce((sum, { minutes }) => sum + minutes, 0),
        givenMinutes: book.givenMinutes + openH * 60,
        cuts: cuts.length > 0 ? [...book.cuts, ...cuts] : book.cuts,
      };
    }
    sums.fill(0);
  }

  const { rule, runs } = programme;
  const atWill = rule !== undefined && triggers.has(rule.kind);
  const asCalendar = rule === undefined ? runs : [{ ...rule, amount: { minutes: 0 } }];
  const decided: DecidedParts = {
    cycleDays: atWill ? longestCycleDays : cycleLength({ programme: { name: programme.name, runs: asCalendar } }),
    before: (hour, trees) => {
      if (hour % 24 !== decider.atH) return;
      decide(hour, trees[mean]);
      ready(hour, trees);
    },
    after: (hour, trees) => {
      const { fluxes } = trees[mean];
      const day = Math.floor(hour / 24);
      const clock = hour - day * 24;
      sums[sumPlaces.transpiredCm3] += fluxes.transpirationCm3;
      sums[sumPlaces.evaporatedCm3] += fluxes.evaporationCm3;
      sums[sumPlaces.rootedRainCm3] += fluxes.rainCm3 * rootedGround;
      sums[sumPlaces.rainMm] += rainRate(demand, day, clock, clock + 1) * mmPerCm;
      sums[sumPlaces.wantedCm3] +=
        demand.hourlyCm3?.[hour] ?? demand.transpirationCm3[day] * sunShareOf(demand, day, clock, clock + 1);
    },
    restart: (trees) => {
      valve.valveH = new Float64Array(0);
      book = emptyBook;
      injection?.restart();
      ready(0, trees);
    },
    book: () => book,
    snapshot: () => ({
      ...{ valveH: Array.from(valve.valveH), sums: Array.from(sums), memory: Array.from(memory), book },
      ...(injection && { injection: injection.snapshot() }),
    }),
    restore: (hour, from, trees) => {
      valve.valveH = Float64Array.from(from?.valveH ?? []);
      sums.set(from?.sums ?? new Float64Array(sums.length));
      memory.set(from?.memory ?? new Float64Array(memory.length));
      book = from?.book ?? emptyBook;
      injection?.restore(from?.injection ?? []);
      ready(Math.max(0, nextDecisionH(decider, hour - 1) - 24), trees);
    },
  };
  const valve: Valve = {
    valveH: new Float64Array(0),
    schedule: emitterSchedule(new Float64Array(0), treeFlowLPerH),
    timeline: new Float64Array(0),
    place: 0,
    decided,
  };
  ready(0, []);
  return valve;
};

/** They open when they will: their settling cycles are the longest. */
const triggers: ReadonlySet<string> = new Set(["depletion", "tension", "own"]);

const emptyBook: WateringBook = { askedRuns: 0, givenRuns: 0, askedMinutes: 0, givenMinutes: 0, cuts: [] };

/** The first hour after one at which the decider decides. */
const nextDecisionH = ({ atH }: Decider, hour: number): number => (Math.floor((hour - atH) / 24) + 1) * 24 + atH;

/** What leaves the emitters from an hour on: the openings since the lines last stood empty are enough to know it. */
function scheduleFrom(valveH: Float64Array, hour: number, flowLPerH: number, drain?: LineDrain): EmitterSchedule {
  const drainH = drain?.drainHours ?? 0;
  let first = Math.max(0, (momentsUpTo(valveH, hour) - 1) & ~1);
  while (first > 0 && valveH[first] - valveH[first - 1] < drainH) first -= 2;
  return emitterSchedule(valveH.subarray(first), flowLPerH, drain);
}

/** Share of the tree's ground that lies over roots. */
function rootedGroundFraction({ grid, roots, groundCm2 }: Prepared): number {
  let rootedCm2 = 0;
  for (let j = 0; j < grid.lanes; j++) {
    let share = 0;
    for (let i = 0; i < grid.layers; i++) share += roots.share[i * grid.lanes + j];
    if (share > 0) rootedCm2 += grid.laneAreaCm2[j];
  }
  return rootedCm2 / groundCm2;
}
