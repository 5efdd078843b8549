import { createSimulation, type Result, type SimulateOptions, type Simulation } from "rootledger";
import { type Arm, type Comparison, type ComparisonResult, gather, scenarioOf } from "rootledger/compare";

/** Work between two looks at the message queue. */
const sliceMs = 16;

export interface Slices {
  /** True once a newer request has come. */
  readonly outdated: () => boolean;
  /** Lets waiting messages in. */
  readonly pause: () => Promise<void>;
  readonly now: () => number;
  readonly progress: (done: number, all: number) => void;
}

export interface SlicedOptions {
  readonly trees: NonNullable<SimulateOptions["trees"]>;
  readonly defaultsUsed: ComparisonResult["defaultsUsed"];
  /** May put a fresh simulation into another state; false gives the whole comparison up. */
  readonly prepare?: (simulation: Simulation, arm: number) => boolean;
}

/**
 * `compare`, carried out in slices: the same simulations and the same gathering, but interruptible.
 * @returns undefined if a newer request came meanwhile, or a simulation could not be prepared
 */
export async function slicedCompare(
  comparison: Comparison,
  { trees, defaultsUsed, prepare }: SlicedOptions,
  slices: Slices,
): Promise<ComparisonResult | undefined> {
  const { soils, programmes, season } = comparison;
  const all = soils.length * programmes.length;
  const cells = { fromHour: 0, hours: season.days * 24 };
  const arms: Arm[] = [];
  const extras = needsExtras(comparison) ? (await import("./season-extras.js")).seasonExtras : {};
  for (const soil of soils) {
    for (const programme of programmes) {
      const simulation = createSimulation(scenarioOf(comparison, soil, programme), {
        trees,
        cells,
        ...extras,
      });
      if (prepare && !prepare(simulation, arms.length)) return undefined;
      const result = await slicedRun(simulation, season.days * 24, {
        ...slices,
        progress: (done) => slices.progress(arms.length + done, all),
      });
      if (result === undefined) return undefined;
      arms.push({ soil: soil.name, programme: programme.name, result: checked(result) });
    }
  }
  return gather(comparison, arms, defaultsUsed);
}

function needsExtras({ block, programmes }: Comparison): boolean {
  const { roots, ball } = block.tree;
  const young = ball !== undefined || roots.growth !== undefined || roots.litter !== undefined;
  const solutes = block.salt !== undefined || block.nitrogen !== undefined;
  return young || solutes || programmes.some((p) => p.nitrogen ?? p.rule ?? p.limits);
}

/** Carries one simulation to its end, letting messages in between. @returns undefined once it is outdated */
export async function slicedRun(simulation: Simulation, hours: number, slices: Slices): Promise<Result | undefined> {
  let sliceEnds = slices.now() + sliceMs;
  while (simulation.status().kind === "running") {
    simulation.step();
    if (slices.now() < sliceEnds) continue;
    slices.progress(simulation.hour() / hours, 1);
    await slices.pause();
    if (slices.outdated()) return undefined;
    sliceEnds = slices.now() + sliceMs;
  }
  return simulation.result();
}

/** @throws Error if a run failed, so that the page says so instead of drawing half a season. */
function checked(result: Result): Result {
  const { status } = result;
  if (status.kind !== "failed") return result;
  throw new Error(`${result.programmeName} on ${result.soilName} failed at hour ${status.hour}: ${status.message}`);
}
