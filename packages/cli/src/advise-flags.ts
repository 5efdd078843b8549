import { availableParallelism } from "node:os";

/** Options of `advise`. */
export const adviseFlags = ["days", "from-day", "members", "seed", "workers", "water", "check", "language"] as const;

/** Draws beside the scenario as said; our choice: with it five, all of which must agree. */
const usualMembers = 4;

export interface AdviseAsked {
  readonly days?: number;
  readonly fromDay?: number;
  readonly members: number;
  readonly seed: string;
  readonly workers: number;
  readonly water: "same" | "may-change";
  /** Days that the slow engine is to run; left out: none. */
  readonly checkDays?: number;
  readonly language: "en" | "es";
}

/** The options as values, or what is wrong with one of them. */
export function adviseAsked(flags: Readonly<Record<string, string>>): AdviseAsked | string {
  const { water = "same", language = "en", seed = "1" } = flags;
  const number = (flag: (typeof adviseFlags)[number], least: number): number | undefined | string => {
    const text = flags[flag];
    if (text === undefined) return undefined;
    const value = Number(text);
    return /^\d{1,6}$/.test(text) && value >= least
      ? value
      : `--${flag} must be a whole number from ${least}: got ${text}`;
  };
  const days = number("days", 1);
  const fromDay = number("from-day", 0);
  const members = number("members", 0);
  const workers = number("workers", 1);
  const checkDays = number("check", 1);
  for (const one of [days, fromDay, members, workers, checkDays]) if (typeof one === "string") return one;
  if (water !== "same" && water !== "may-change") return `--water must be same or may-change: got ${water}`;
  if (language !== "en" && language !== "es") return `--language must be en or es: got ${language}`;
  return {
    ...(typeof days === "number" ? { days } : {}),
    ...(typeof fromDay === "number" ? { fromDay } : {}),
    ...(typeof checkDays === "number" ? { checkDays } : {}),
    members: typeof members === "number" ? members : usualMembers,
    workers: typeof workers === "number" ? workers : availableParallelism(),
    ...{ seed, water, language },
  };
}
