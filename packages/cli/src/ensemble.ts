import {
  defaultPriors,
  type EnsemblePlan,
  type EnsembleResult,
  ensemble,
  memberRun,
  oneThread,
} from "rootledger/chance";
import { type Comparison, parseComparison, parseScenario, treesOf } from "rootledger/scenario";
import { type EnsembleAsked, ensembleAsked } from "./ensemble-flags.js";
import { exit, type Io } from "./io.js";
import { ensembleCsv, ensembleText } from "./print/ensemble.js";
import { faultLines } from "./print/faults.js";
import { jsonText } from "./print/json.js";
import { progress } from "./progress.js";
import { type Input, readInput } from "./read-input.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

/** `rootledger ensemble FILE`: a comparison's programmes, or one scenario's, over draws of what is unknown. */
export async function ensembleCommand({ file, output, engine, flags }: Asked, io: Io): Promise<number> {
  const asked = ensembleAsked(flags);
  if (typeof asked === "string") {
    io.stderr(`${asked}; ${words.seeHelp}\n`);
    return exit.faults;
  }
  const parsed = parseEither(await readInput(file, io));
  if (!parsed.ok) {
    io.stderr(faultLines(parsed.faults));
    return exit.faults;
  }
  const comparison = engine === undefined ? parsed.comparison : { ...parsed.comparison, engine };
  const result = await runEnsemble(comparison, asked, io);
  if (output === "json") io.stdout(jsonText({ ...result, defaultsUsed: parsed.defaultsUsed, notes: parsed.notes }));
  else if (output === "csv") io.stdout(ensembleCsv(result));
  else io.stdout(ensembleText(result));
  return exit.done;
}

/** Runs the default priors of a comparison with workers, or in this thread where there are none. */
export function runEnsemble(comparison: Comparison, asked: EnsembleAsked, io: Io): Promise<EnsembleResult> {
  const { members, seed, workers } = asked;
  const plan: EnsemblePlan = {
    comparison,
    trees: treesOf(comparison.block),
    draws: { kind: "priors", priors: defaultPriors(comparison), seed },
    weatherYears: [],
  };
  const executor = io.workers ? io.workers(plan, workers) : oneThread(memberRun(plan));
  const tell = progress(io);
  return ensemble(plan, { members, executor, onProgress: (done, all) => tell(`${done} of ${all} members done`) });
}

function parseEither(input: Input) {
  if (!input.ok) return input;
  const { value, files } = input;
  const lists = typeof value === "object" && value !== null && ("soils" in value || "programmes" in value);
  if (lists) return parseComparison(value, files);
  const parsed = parseScenario(value, files);
  if (!parsed.ok) return parsed;
  const { soil, programme, ...common } = parsed.scenario;
  return { ...parsed, comparison: { ...common, remark: "", soils: [soil], programmes: [programme] } };
}
