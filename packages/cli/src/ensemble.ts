import {
  type EnsemblePlan,
  type EnsembleResult,
  type Executor,
  ensemble,
  memberRun,
  oneThread,
  rankUnknowns,
} from "rootledger/chance";
import { inputsKey } from "rootledger/scenario";
import { ensembleAsked } from "./ensemble-flags.js";
import { ensemblePart } from "./ensemble-part.js";
import { readPlan } from "./ensemble-plan.js";
import { exit, type Io } from "./io.js";
import { parseEither } from "./parse-either.js";
import { ensembleText } from "./print/ensemble.js";
import { jsonText } from "./print/json.js";
import { ensembleTable, rankingTable } from "./print/measure-tables.js";
import { rankingText } from "./print/ranking.js";
import { tableText } from "./print/table.js";
import { progress } from "./progress.js";
import { readInput } from "./read-input.js";
import { misused, sound, usable } from "./refused.js";
import type { Asked } from "./run.js";
import { shardWords } from "./words-shards.js";

/** `rootledger ensemble FILE`: a comparison's programmes, or one scenario's, over draws of what is unknown. */
export async function ensembleCommand({ file, output, engine, flags }: Asked, io: Io): Promise<number> {
  const asked = usable(ensembleAsked(flags));
  if (asked.out !== undefined && (output === "csv" || output === "schema")) throw misused(shardWords.noCsvOfShard);
  const input = sound(await readInput(file, io));
  const parsed = sound(parseEither(input));
  const comparison = engine === undefined ? parsed.comparison : { ...parsed.comparison, engine };
  const { plan, members } = sound(await readPlan(comparison, input.value, asked, io));
  const { defaultsUsed, notes } = parsed;
  const said = { inputsKey: inputsKey(comparison), defaultsUsed, notes };
  if (asked.rank !== undefined) {
    const ranking = await rankUnknowns(plan, {
      ...{ method: asked.rank, members, onProgress: tellMembers(io) },
      executorOf: (of) => executorOf(of, asked.workers, io),
    });
    if (output === "json") io.stdout(jsonText({ ...ranking, defaultsUsed, notes }));
    else io.stdout(output === "table" ? rankingText(ranking) : tableText(rankingTable(ranking), output));
    return exit.done;
  }
  if (asked.out !== undefined) {
    return ensemblePart({ plan, members, asked, folder: asked.out, output, said, onProgress: tellMembers(io) }, io);
  }
  const result = await runEnsemble(plan, members, asked.workers, io);
  if (output === "json") io.stdout(jsonText({ ...result, ...said }));
  else io.stdout(output === "table" ? ensembleText(result) : tableText(ensembleTable(result), output));
  return exit.done;
}

/** Runs a plan with workers, or in this thread where there are none. */
export const runEnsemble = (plan: EnsemblePlan, members: number, workers: number, io: Io): Promise<EnsembleResult> =>
  ensemble(plan, { members, executor: executorOf(plan, workers, io), onProgress: tellMembers(io) });

const executorOf = (plan: EnsemblePlan, workers: number, io: Io): Executor =>
  io.workers ? io.workers(plan, workers) : oneThread(memberRun(plan));

function tellMembers(io: Io): (done: number, all: number) => void {
  const tell = progress(io);
  return (done, all) => tell(`${done} of ${all} members done`);
}
