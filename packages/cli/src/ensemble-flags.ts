import { availableParallelism } from "node:os";

/** Options of `ensemble`, and of `compare` once it has `--members`. */
export const ensembleFlags = ["members", "seed", "workers"] as const;

/** Members where none are asked for; our choice: a band end then rests on ten draws. */
const usualMembers = 200;

export interface EnsembleAsked {
  readonly members: number;
  readonly seed: string;
  readonly workers: number;
}

/** The options as numbers, or what is wrong with one of them. */
export function ensembleAsked(flags: Readonly<Record<string, string>>): EnsembleAsked | string {
  const members = wholeNumber(flags.members ?? String(usualMembers));
  const workers = wholeNumber(flags.workers ?? String(availableParallelism()));
  if (members === undefined) return `--members must be a whole number above 0: got ${flags.members}`;
  if (workers === undefined) return `--workers must be a whole number above 0: got ${flags.workers}`;
  return { members, workers, seed: flags.seed ?? "1" };
}

function wholeNumber(text: string): number | undefined {
  const value = Number(text);
  return /^\d+$/.test(text) && value > 0 && value <= 1e9 ? value : undefined;
}
