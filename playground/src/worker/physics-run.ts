import { createSimulation, type Result } from "rootledger";
import { type Arm, type Comparison, type ComparisonResult, gather, scenarioOf } from "rootledger/compare";
import { everyPart } from "rootledger/scenario";
import type { CheckAnswer, CheckRequest } from "./protocol.js";
import { type Slices, slicedCompare, slicedRun } from "./sliced-compare.js";
import { beginFrom } from "./soil-memory.js";

interface Parsed {
  readonly comparison: Comparison;
  readonly defaultsUsed: ComparisonResult["defaultsUsed"];
}

/**
 * The same days by both engines from the same soil. The fast one goes first; after each run of the slow one the answer so
 * far is given. A run for which the slow engine finds no balance is kept as failed and held against nothing.
 */
export async function checkWithPhysics(
  { id, starts }: CheckRequest,
  { comparison, defaultsUsed }: Parsed,
  slices: Slices,
  give: (answer: { readonly kind: "check" } & CheckAnswer) => void,
): Promise<void> {
  const began = slices.now();
  const fast = await slicedCompare(
    comparison,
    {
      trees: ["mean"],
      defaultsUsed,
      prepare: (simulation, arm) => {
        beginFrom(simulation, starts[arm]!);
        return true;
      },
    },
    { ...slices, progress: () => undefined },
  );
  if (fast === undefined) return;
  const { soils, programmes, season } = comparison;
  const slow: Comparison = { ...comparison, engine: "richards" };
  const physics: Result[] = [];
  const finished: Arm[] = [];
  const all = soils.length * programmes.length;
  for (const soil of soils) {
    for (const programme of programmes) {
      const scenario = scenarioOf(slow, soil, programme);
      const simulation = createSimulation(scenario, {
        ...everyPart(scenario),
        trees: ["mean"],
      });
      beginFrom(simulation, starts[physics.length]!);
      const result = await slicedRun(simulation, season.days * 24, {
        ...slices,
        progress: (done) => slices.progress(physics.length + done, all),
      });
      if (result === undefined) return;
      physics.push(result);
      if (result.status.kind === "finished") finished.push({ soil: soil.name, programme: programme.name, result });
      const differences = finished.length === 0 ? [] : gather(slow, finished, []).differences;
      const complete = physics.length === all;
      give({ id, kind: "check", fast, physics, differences, tookMs: slices.now() - began, complete });
    }
  }
}
