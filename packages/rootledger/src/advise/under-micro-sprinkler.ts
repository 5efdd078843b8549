import { lineLayout } from "../lines/layout.js";
import { type MicroSprinkler, microSprinklerRun } from "../lines/micro-sprinkler.js";
import { amountHours, type Run } from "../programme/programme.js";
import type { Lines, Scenario } from "../scenario/scenario.js";

/** The same ground and programme under a sprinkler that stands by the trunk, ready to be simulated. */
export interface SprinklerBlock {
  /** Its water is what reaches the soil: the litter's share is taken off every run. */
  readonly scenario: Scenario;
  readonly wettedM2: number;
  /** Of the strip along the row that has the area of the discs. */
  readonly stripHalfWidthM: number;
  readonly applicationMmPerH: number;
  /** Taken off every run by litter that has dried since the one before, L; a whole run at most. */
  readonly heldLPerRun: number;
  /** Litres at the sprinkler in a run and those that reach the soil, run by run of the calendar. */
  readonly runs: readonly { readonly grossL: number; readonly reachingL: number }[];
  readonly warnings: readonly SprinklerWarning[];
}

/** `wets-trunk`: always; wet bark invites rot. `litter-takes-run`: some run never gets through. `beyond-row`: the disc meets the next row's. */
export type SprinklerWarning = "wets-trunk" | "litter-takes-run" | "beyond-row";

/** Low-quarter uniformity of micro-sprays. Source: California Polytechnic State University irrigation evaluations, 329 fields. */
const sprayUniformity = 0.8;
/** Lines that stand for an even strip: this far apart, so many on a side at least and at most; emitters along them. Our choice. */
const apartM = 0.2;
const [fewest, most] = [2, 6];
const alongM = 0.2;

/**
 * A micro-sprinkler in place of the driplines, with the same litres at the sprinkler: the wetted discs as a strip of their area along
 * the row, watered evenly by closely set lines at the sprinkler's flow; litter over it filled first in every run (all its pulses
 * together), which delays the soil's water; roots where the strip is wet. Left out: drift, the uneven throw of a real sprinkler,
 * evaporation from the wet litter that would spare the tree some demand, the round edge of a lone disc.
 *
 * @throws RangeError if the programme is no calendar, as `microSprinklerRun`, or the strip is narrower than its lines need.
 * @example underMicroSprinkler(scenario, { flowLPerH: 40, wettedRadiusM: 1.5, litterStorageMm: 2 }).wettedM2
 */
export function underMicroSprinkler(scenario: Scenario, sprinkler: MicroSprinkler): SprinklerBlock {
  const { block, programme } = scenario;
  if (programme.rule !== undefined) throw new RangeError("underMicroSprinkler requires a calendar of runs: got a rule");
  const { treeSpacingM, rowSpacingM } = block;
  const old = { ...block.lines, ...programme.lines };
  const { emittersPerTree } = lineLayout(old.offsetsM, treeSpacingM, old.emitterSpacingM);
  const oldFlow = (emittersPerTree - old.pluggedPerTree) * (programme.emitterFlowLPerH ?? old.emitterFlowLPerH);
  const { flowLPerH, wettedRadiusM } = sprinkler;
  const { wettedM2, heldByLitterL } = microSprinklerRun(sprinkler, 1);
  const beyond = wettedM2 > treeSpacingM * rowSpacingM || 2 * wettedRadiusM > rowSpacingM;
  const halfWidthM = Math.min(wettedM2 / (2 * treeSpacingM), rowSpacingM / 2);
  const runs = programme.runs.map((run) => {
    const grossL = amountHours(run.amount, oldFlow) * oldFlow;
    return { run, grossL, reachingL: grossL > heldByLitterL ? grossL - heldByLitterL : 0 };
  });
  const { emitterFlowLPerH: _, lines: __, ...calendar } = programme;
  const { drainOut: ___, ...full } = block.lines;
  return {
    scenario: {
      ...scenario,
      block: { ...block, lines: { ...full, ...evenStrip(halfWidthM, treeSpacingM, flowLPerH) } },
      programme: {
        ...calendar,
        runs: runs
          .filter(({ reachingL }) => reachingL > 0)
          .map(({ run, reachingL }) => delayed(run, reachingL, heldByLitterL / flowLPerH)),
      },
    },
    wettedM2,
    stripHalfWidthM: halfWidthM,
    applicationMmPerH: flowLPerH / wettedM2,
    heldLPerRun: heldByLitterL,
    runs: runs.map(({ grossL, reachingL }) => ({ grossL, reachingL })),
    warnings: [
      "wets-trunk",
      ...(runs.some(({ reachingL }) => reachingL === 0) ? (["litter-takes-run"] as const) : []),
      ...(beyond ? (["beyond-row"] as const) : []),
    ],
  };
}

function evenStrip(halfWidthM: number, treeSpacingM: number, flowLPerH: number): Omit<Lines, "drainOut"> {
  const perSide = Math.min(most, Math.max(fewest, Math.ceil(halfWidthM / apartM)));
  const offsets = Array.from({ length: perSide }, (_, i) => ((i + 0.5) * halfWidthM) / perSide);
  const offsetsM = [...offsets.map((offset) => -offset).reverse(), ...offsets];
  const emitters = (offsetsM.length * treeSpacingM) / alongM;
  return {
    ...{ offsetsM, emitterSpacingM: alongM, emitterFlowLPerH: flowLPerH / emitters, pluggedPerTree: 0 },
    lowQuarterUniformityFraction: sprayUniformity,
  };
}

/** The soil's water begins when the litter is full. */
function delayed(run: Run, litresPerTree: number, delayH: number): Run {
  const startH = run.startH + delayH;
  const days = Math.floor(startH / 24);
  return { ...run, startH: startH - days * 24, firstDay: run.firstDay + days, amount: { litresPerTree } };
}
