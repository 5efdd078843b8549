import { join } from "node:path";
import type { DrawSource, PlainTally } from "rootledger/chance";
import type { InputFault } from "../read-input.js";
import { shardWords as words } from "../words-shards.js";
import { type Disk, DiskFault } from "./disk.js";
import { type PartHead, unsealed } from "./head.js";

/** A shard that was found, with the folder that it is in. */
export interface FoundPart extends PartHead {
  readonly folder: string;
  /** Path of its JSON file. */
  readonly path: string;
}

export type PartRead =
  | { readonly ok: true; readonly part: FoundPart }
  | { readonly ok: false; readonly fault: InputFault };

const headName = /^shard-\d+-of-\d+\.json$/;

/** Paths of the JSON files of the shards in a folder. */
export const partsIn = async (disk: Disk, folder: string): Promise<string[]> =>
  (await disk.list(folder)).filter((name) => headName.test(name)).map((name) => join(folder, name));

/** Reads a shard's JSON file; it must be what a shard wrote, to the byte. */
export async function readPart(disk: Disk, folder: string, path: string): Promise<PartRead> {
  const head = await readSealed(disk, path);
  if (!head.ok) return head;
  const { ensemble, ...part } = head.content as PartHead;
  return { ok: true, part: { ...part, ensemble: { ...ensemble, draws: withArrays(ensemble.draws) }, folder, path } };
}

/** The tally of a shard, which must be what the shard wrote. */
export async function readTally(disk: Disk, { folder, files }: FoundPart): Promise<PlainTally> {
  const name = files.find((file) => file.name.endsWith(".tally.json"))?.name ?? "";
  const read = await readSealed(disk, join(folder, name));
  if (!read.ok) throw new DiskFault(join(folder, name), read.fault.received, "read");
  return read.content as PlainTally;
}

/** What is wrong with a shard's files: absent, cut short, grown or changed. */
export async function fileFaults(disk: Disk, { folder, files }: FoundPart): Promise<InputFault[]> {
  const faults: InputFault[] = [];
  for (const file of files) {
    const path = join(folder, file.name);
    try {
      const { bytes, sha256 } = await disk.digest(path);
      if (bytes !== file.bytes) {
        faults.push({ path, received: `${bytes} of ${file.bytes} ${words.bytes}`, rule: words.sameLength });
      } else if (sha256 !== file.sha256) faults.push({ path, received: sha256, rule: words.sameSum });
    } catch (error) {
      if (!(error instanceof DiskFault)) throw error;
      faults.push({ path, received: error.reason, rule: words.readable });
    }
  }
  return faults;
}

async function readSealed(disk: Disk, path: string) {
  const content = unsealed(await disk.read(path));
  if (content !== undefined) return { ok: true, content } as const;
  return { ok: false, fault: { path, received: words.otherText, rule: words.unchanged } } as const;
}

const withArrays = (draws: DrawSource): DrawSource =>
  draws.kind === "own" ? { ...draws, values: Float64Array.from(draws.values) } : draws;
