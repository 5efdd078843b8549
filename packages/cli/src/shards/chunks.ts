import { join } from "node:path";
import type { MemberOutcome } from "rootledger/chance";
import type { Disk } from "./disk.js";
import { sealed, unsealed } from "./head.js";
import type { Part } from "./part.js";

/** Members of one chunk: what is lost at most, for each worker, when a shard is killed. Our choice: some seconds of work. */
const chunkMembers = 20;

interface Chunk {
  readonly key: string;
  readonly from: number;
  readonly to: number;
  readonly outcomes: readonly (
    | { readonly member: number; readonly values: readonly number[] }
    | { readonly member: number; readonly failure: string }
  )[];
}

/** The complete pieces of a shard that is being run, one file for each, so that a shard that was killed goes on from there. */
export interface Chunks {
  /** Stretches of members that are not there yet. */
  readonly missing: () => Promise<readonly { readonly from: number; readonly to: number }[]>;
  /** Takes an outcome; once the last of its chunk is in, the chunk is written. Resolves when all that was taken is on the disk. */
  readonly add: (outcome: MemberOutcome) => Promise<void>;
  /** Outcomes by member, one chunk in memory at a time. */
  readonly outcomes: () => AsyncIterable<MemberOutcome>;
}

/**
 * The chunks of a shard in a folder. What a file holds must be of this very shard, or it is run anew.
 *
 * @param key names the ensemble; a chunk of another one is none of ours
 */
export function chunksOf(disk: Disk, folder: string, key: string, part: Part): Chunks {
  const starts = Array.from(
    { length: Math.ceil((part.to - part.from) / chunkMembers) },
    (_, i) => part.from + i * chunkMembers,
  );
  const endOf = (from: number): number => Math.min(from + chunkMembers, part.to);
  const pathOf = (from: number): string => join(folder, `members-${from}-to-${endOf(from) - 1}.json`);
  const waiting = new Map<number, MemberOutcome[]>();

  async function read(from: number): Promise<Chunk | undefined> {
    const chunk = unsealed(await disk.read(pathOf(from))) as Chunk | undefined;
    return chunk?.key === key && chunk.from === from && chunk.to === endOf(from) ? chunk : undefined;
  }

  async function missing() {
    const names = new Set(await disk.list(folder));
    const stretches: { from: number; to: number }[] = [];
    for (const from of starts) {
      const there = names.has(`members-${from}-to-${endOf(from) - 1}.json`) && (await read(from)) !== undefined;
      const last = stretches.at(-1);
      if (there) continue;
      if (last?.to === from) last.to = endOf(from);
      else stretches.push({ from, to: endOf(from) });
    }
    return stretches;
  }

  async function add(outcome: MemberOutcome): Promise<void> {
    const from = part.from + Math.floor((outcome.member - part.from) / chunkMembers) * chunkMembers;
    const have = waiting.get(from) ?? [];
    waiting.set(from, have);
    have.push(outcome);
    if (have.length < endOf(from) - from) return;
    waiting.delete(from);
    have.sort((a, b) => a.member - b.member);
    const file = await disk.create(pathOf(from));
    try {
      await file.write(sealed({ key, from, to: endOf(from), outcomes: have }));
      await file.keep();
    } catch (error) {
      await file.drop();
      throw error;
    }
  }

  async function* outcomes(): AsyncGenerator<MemberOutcome> {
    for (const from of starts) {
      for (const outcome of (await read(from))?.outcomes ?? []) {
        yield "failure" in outcome ? outcome : { ...outcome, values: Float64Array.from(outcome.values) };
      }
    }
  }
  return { missing, add, outcomes };
}
