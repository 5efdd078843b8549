import { createSimulation } from "rootledger";
import { everyPart, type Files, parseScenario } from "rootledger/scenario";
import { groundFacts } from "./ground-facts.js";
import type { SweepAnswer, SweepRequest, WorkerMessage } from "./protocol.js";
import { withRain } from "./rain-days.js";
import { type Slices, slicedRun } from "./sliced-compare.js";

/** Scenarios one by one, each given as soon as it is there; ends at the first that cannot be read or run. */
export async function sweepScenarios(
  { id, runs }: SweepRequest,
  files: Files,
  slices: Slices,
  give: (answer: { readonly kind: "swept" } & SweepAnswer) => void,
  refuse: (message: Extract<WorkerMessage, { kind: "faults" | "failed" }>) => void,
): Promise<void> {
  for (const [index, { file, tree, rainMm = {} }] of runs.entries()) {
    const rained = withRain(files, rainMm);
    const parsed = isFault(rained) ? { ok: false as const, faults: [rained] } : parseScenario(file, rained);
    if (!parsed.ok) {
      refuse({ id, kind: "faults", faults: parsed.faults, index });
      return;
    }
    const { scenario } = parsed;
    const { block, season } = scenario;
    const hours = season.days * 24;
    const trees = tree === "mean" ? (["mean"] as const) : ([tree, "mean"] as const);
    const simulation = createSimulation(scenario, { ...everyPart(scenario), trees, cells: { fromHour: 0, hours } });
    const result = await slicedRun(simulation, hours, slices);
    if (result === undefined) return;
    if (result.status.kind === "failed") {
      refuse({ id, kind: "failed", message: result.status.message });
      return;
    }
    give({ id, kind: "swept", index, all: runs.length, result, ground: groundFacts(block.tree) });
  }
}

const isFault = (of: Files | { readonly code: string }): of is Extract<ReturnType<typeof withRain>, { code: string }> =>
  typeof Reflect.get(of, "code") === "string" && typeof Reflect.get(of, "rule") === "string";
