import { type ArmAnswer, type ArmBeside, armsBeside, type ComparisonResult, runArm } from "rootledger/compare";
import type { Comparison } from "rootledger/scenario";
import type { Io } from "./io.js";
import { progress } from "./progress.js";
import { words } from "./words.js";
import { armWords } from "./words-arms.js";

/** Options of `compare` for what stands beside it. */
export const armFlags = ["arms", "keep"] as const;

/** Names given to `--arms`; undefined for all of them. */
export type ArmNames = readonly string[] | undefined;

/** The names asked for, or what is wrong with one of them. */
export function armNames(asked: string): ArmNames | string {
  const known = Object.keys(armWords);
  if (asked === "all") return undefined;
  const names = asked.split(",");
  const strange = names.find((name) => !known.includes(name));
  return strange === undefined ? names : `--arms ${words.notAnArm} ${known.join(", ")}: got ${strange}`;
}

/** Runs the arms asked for, one after the other, with a folder that keeps them if one is given. */
export async function runArms(
  comparison: Comparison,
  result: ComparisonResult,
  names: ArmNames,
  folder: string | undefined,
  io: Io,
): Promise<ArmAnswer[]> {
  const chosen = (arm: ArmBeside): boolean => names === undefined || names.includes(arm.id);
  const arms = armsBeside(comparison, result).filter(chosen);
  const store = folder === undefined ? undefined : io.store?.(folder);
  const tell = progress(io);
  const answers: ArmAnswer[] = [];
  for (const arm of arms) {
    tell(`${answers.length} of ${arms.length} arms done, ${armWords[arm.id]}`);
    answers.push(await runArm(arm, store));
  }
  return answers;
}
