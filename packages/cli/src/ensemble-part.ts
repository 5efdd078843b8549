import { join } from "node:path";
import { version } from "rootledger";
import { type EnsemblePlan, type Executor, memberRun, oneThread } from "rootledger/chance";
import type { EnsembleAsked } from "./ensemble-flags.js";
import { exit, type Io } from "./io.js";
import { diskFault } from "./merge.js";
import { jsonText } from "./print/json.js";
import { faulty } from "./refused.js";
import { DiskFault } from "./shards/disk.js";
import { ensembleHead, type PartHead, type Said } from "./shards/head.js";
import { partName, partOf } from "./shards/part.js";
import { fileFaults, readPart } from "./shards/read-part.js";
import { runPart } from "./shards/run-part.js";
import { shardWords as words } from "./words-shards.js";

/** What is run, as `ensemble` read it. */
export interface PartRequest {
  readonly plan: EnsemblePlan;
  readonly members: number;
  readonly asked: EnsembleAsked;
  readonly folder: string;
  readonly output: "table" | "json" | "csv" | "schema";
  readonly said: Said;
  readonly onProgress: (done: number, all: number) => void;
}

/** `rootledger ensemble FILE --shard i/n --out FOLDER`: one shard; one that is there already is left as it is. */
export async function ensemblePart(request: PartRequest, io: Io): Promise<number> {
  const { plan, members, asked, folder, output, said, onProgress } = request;
  const { disk } = io;
  if (disk === undefined) throw new Error(words.noDisk);
  const head = ensembleHead(plan, members, version, said);
  const part = partOf(asked.part ?? { shard: 1, shards: 1 }, members);
  const path = join(folder, `${partName(part)}.json`);
  const executor: Executor = io.workers
    ? io.workers(plan, asked.workers)
    : oneThread(memberRun(plan), () => new Promise((resolve) => setImmediate(resolve)));
  try {
    await disk.makeFolder(folder);
    const there = (await disk.list(folder)).includes(`${partName(part)}.json`);
    const before = there ? await readPart(disk, folder, path) : undefined;
    if (before?.ok && before.part.ensemble.input !== head.input) {
      const received = before.part.ensemble.input;
      throw faulty([{ path, received, rule: words.otherEnsemble }]);
    }
    const whole = before?.ok && (await fileFaults(disk, before.part)).length === 0;
    const done = whole ? before.part : await runPart({ plan, head, part, folder, disk, executor, onProgress });
    if (output === "json") io.stdout(jsonText(summary(done)));
    else io.stdout(`${sentence(done, path)}${whole ? ` ${words.done}` : ""}\n`);
    return exit.done;
  } catch (error) {
    if (!(error instanceof DiskFault)) throw error;
    throw faulty([diskFault(error)]);
  }
}

function summary({ shard, shards, from, to, finished, failed, files, ensemble }: PartHead) {
  const { version: by, input, seed, members, columns } = ensemble;
  return { version: by, input, seed, members, shard, shards, from, to, finished, failed, files, columns };
}

function sentence({ shard, shards, from, to, finished, failed }: PartHead, path: string): string {
  const range = from < to ? `${words.members} ${from} ${words.to} ${to - 1}` : words.noMembers;
  return `${words.shard} ${shard}/${shards}: ${range}, ${finished} ${words.finished}, ${failed} ${words.failed}; ${path}`;
}
