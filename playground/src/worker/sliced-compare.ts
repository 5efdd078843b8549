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
  const hours = season.days * 24;
  const all = soils.length * programmes.length;
  const arms: Arm[] = [];
  let sliceEnds = slices.now() + sliceMs;
  for (const soil of soils) {
    for (const programme of programmes) {
      const scenario = scenarioOf(comparison, soil, programme);
      const simulation = createSimulation(scenario, { trees, cells: { fromHour: 0, hours } });
      if (prepare && !prepare(simulation, arms.length)) return undefined;
      while (simulation.status().kind === "running") {
        simulation.step();
        if (slices.now() < sliceEnds) continue;
        slices.progress(arms.length + simulation.hour() / hours, all);
        await slices.pause();
        if (slices.outdated()) return undefined;
        sliceEnds = slices.now() + sliceMs;
      }
      arms.push({ soil: soil.name, programme: programme.name, result: checked(simulation.result()) });
    }
  }
  return gather(comparison, arms, defaultsUsed);
}

/** @throws Error if a run failed, so that the page says so instead of drawing half a season. */
function checked(result: Result): Result {
  const { status } = result;
  if (status.kind !== "failed") return result;
  throw new Error(`${result.programmeName} on ${result.soilName} failed at hour ${status.hour}: ${status.message}`);
}
