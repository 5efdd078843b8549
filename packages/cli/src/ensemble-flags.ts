import { availableParallelism } from "node:os";
import type { RankingMethod } from "rootledger/chance";
import { type Part, shardOf } from "./shards/part.js";
import { shardWords } from "./words-shards.js";

/** Options of `compare` once it has `--members`. */
export const ensembleFlags = ["members", "seed", "workers", "draws", "record"] as const;

/** Options of `ensemble`. */
export const rankingFlags = [...ensembleFlags, "rank", "shard", "out"] as const;

/** Members where none are asked for; our choice: a band end then rests on ten draws. */
const usualMembers = 200;

export interface EnsembleAsked {
  /** Undefined: 200, or the rows of a table of draws. */
  readonly members: number | undefined;
  readonly seed: string;
  readonly workers: number;
  /** A table of draws in place of the priors. */
  readonly drawsFile?: string;
  /** A longer weather record whose years are drawn too. */
  readonly recordFile?: string;
  readonly rank?: RankingMethod;
  /** One shard of the ensemble. */
  readonly part?: Pick<Part, "shard" | "shards">;
  /** Where its files go; without a shard, all members are one. */
  readonly out?: string;
}

/** The options as numbers, or what is wrong with one of them. */
export function ensembleAsked(flags: Readonly<Record<string, string>>): EnsembleAsked | string {
  const members = flags.members === undefined ? undefined : wholeNumber(flags.members);
  const workers = wholeNumber(flags.workers ?? String(availableParallelism()));
  const { rank, draws, record, shard, out } = flags;
  const part = shard === undefined ? undefined : shardOf(shard);
  if (flags.members !== undefined && members === undefined) {
    return `--members must be a whole number above 0: got ${flags.members}`;
  }
  if (workers === undefined) return `--workers must be a whole number above 0: got ${flags.workers}`;
  if (rank !== undefined && rank !== "screen" && rank !== "shares")
    return `--rank must be screen or shares: got ${rank}`;
  if (draws !== undefined && (rank !== undefined || flags.seed !== undefined)) {
    return "--draws is a table of its own: it takes neither --rank nor --seed";
  }
  if (shard !== undefined && part === undefined) return `${shardWords.notAShard} ${shard}`;
  if (shard !== undefined && out === undefined) return shardWords.outNeeded;
  if (rank !== undefined && out !== undefined) return shardWords.noRankInShards;
  return {
    ...{ members, workers, seed: flags.seed ?? "1" },
    ...(draws === undefined ? {} : { drawsFile: draws }),
    ...(record === undefined ? {} : { recordFile: record }),
    ...(rank === undefined ? {} : { rank }),
    ...(part === undefined ? {} : { part }),
    ...(out === undefined ? {} : { out }),
  };
}

/** Members to run: as asked, else every row of the table, else the usual number. */
export const membersOf = (asked: EnsembleAsked, rows: number | undefined): number =>
  asked.members ?? rows ?? usualMembers;

function wholeNumber(text: string): number | undefined {
  const value = Number(text);
  return /^\d+$/.test(text) && value > 0 && value <= 1e9 ? value : undefined;
}
