import { join } from "node:path";
import { createTally, type EnsemblePlan, type Executor } from "rootledger/chance";
import { type Cell, cellsOf } from "../print/column.js";
import { csvText } from "../print/csv-text.js";
import { chunksOf } from "./chunks.js";
import type { Digest, Disk } from "./disk.js";
import { type EnsembleHead, type PartHead, sealed } from "./head.js";
import { memberColumns, memberRows } from "./member-table.js";
import { parquetFile } from "./parquet-file.js";
import { type Part, partName } from "./part.js";
import { writeText } from "./write-text.js";

/** What to run and where. */
export interface PartWork {
  readonly plan: EnsemblePlan;
  readonly head: EnsembleHead;
  readonly part: Part;
  readonly folder: string;
  readonly disk: Disk;
  readonly executor: Executor;
  readonly onProgress: (done: number, all: number) => void;
}

/**
 * Runs one shard and writes its table (CSV and Parquet), its tally and, last, its JSON file. What it writes depends on the
 * ensemble and the shard alone: not on workers, nor on how often it was killed on the way. Members that are already there in
 * complete chunks are not run again.
 */
export async function runPart(work: PartWork): Promise<PartHead> {
  const { head, part, folder, disk } = work;
  const name = partName(part);
  const unfinished = join(folder, `${name}.unfinished`);
  await disk.makeFolder(unfinished);
  const chunks = chunksOf(disk, unfinished, `${head.input} ${head.version}`, part);
  await runMissing(work, chunks);
  const { finished, failed, files } = await writeTables(work, chunks, join(folder, name));
  const partHead: PartHead = { ...part, finished, failed, files, ensemble: head };
  await writeText(disk, join(folder, `${name}.json`), sealed(partHead));
  await disk.remove(unfinished);
  return partHead;
}

async function runMissing(
  { part, executor, onProgress }: PartWork,
  chunks: ReturnType<typeof chunksOf>,
): Promise<void> {
  const missing = await chunks.missing();
  const all = part.to - part.from;
  let done = all - missing.reduce((sum, { from, to }) => sum + to - from, 0);
  for (const { from, to } of missing) {
    const cancel = { aborted: false };
    const writes: Promise<void>[] = [];
    let failure: unknown;
    await executor({
      ...{ from, to, cancel },
      deliver: (outcome) => {
        writes.push(
          chunks.add(outcome).catch((error: unknown) => {
            failure ??= error;
            cancel.aborted = true;
          }),
        );
        onProgress(++done, all);
      },
    });
    await Promise.all(writes);
    if (failure !== undefined) throw failure;
  }
}

async function writeTables({ plan, head, disk }: PartWork, chunks: ReturnType<typeof chunksOf>, path: string) {
  const columns = memberColumns(plan, head.layout);
  const rowsOf = memberRows(plan.draws, head.layout);
  const tally = createTally(head.layout);
  const csv = await disk.create(`${path}.csv`);
  const parquet = await parquetFile(disk, `${path}.parquet`, columns);
  try {
    await csv.write(csvText([columns.map(({ name }) => name)]));
    for await (const outcome of chunks.outcomes()) {
      tally.add(outcome);
      for (const row of rowsOf(outcome)) {
        await csv.write(csvText([cellsOf(columns, row)]));
        await parquet.add(columns.map(({ of }): Cell => of(row)));
      }
    }
    const said = tally.plain();
    const files = [
      named(`${path}.csv`, await csv.keep()),
      named(`${path}.parquet`, await parquet.keep()),
      named(`${path}.tally.json`, await writeText(disk, `${path}.tally.json`, sealed(said))),
    ];
    return { finished: said.finished, failed: said.failed, files };
  } catch (error) {
    await Promise.all([csv.drop(), parquet.drop()]);
    throw error;
  }
}

const named = (path: string, digest: Digest) => ({ name: path.slice(path.lastIndexOf("/") + 1), ...digest });
