import { contentKey } from "../numeric/content-key.js";
import { engineOf } from "../scenario/engine-of.js";
import { version } from "../version.js";
import type { ArmAbsence, ArmBeside, ArmId } from "./arms.js";
import { compare } from "./compare.js";
import type { Badge, ComparisonResult, Difference } from "./comparison.js";

/** Where answers of arms are kept from one time to the next, by the key of their content. */
export interface ArmStore {
  /** The text kept under a key, if there is one. */
  readonly read: (key: string) => Promise<string | undefined>;
  /** Keeps a text under a key. */
  readonly write: (key: string, text: string) => Promise<void>;
}

/** What an arm says; plain data. */
export interface ArmAnswer {
  readonly id: ArmId;
  readonly absent?: ArmAbsence;
  readonly days: number;
  readonly engine: "bucket" | "richards";
  readonly badges: readonly Badge[];
  readonly changes: ComparisonResult["changes"];
  readonly differences: readonly Difference[];
  /** Came out of the store, no run. */
  readonly kept: boolean;
}

/**
 * Runs one arm, or reads its answer from a store if it was run before: the key is made of the whole content of the arm (block,
 * soils, weather, programmes, season, start, engine, tree) and the library's version. What a store holds that cannot be read
 * is run anew.
 *
 * @throws RangeError as `compare`.
 * @example (await runArm(armsBeside(comparison, result)[1], store)).differences[0].verdict
 */
export async function runArm(arm: ArmBeside, store?: ArmStore): Promise<ArmAnswer> {
  if ("absent" in arm) {
    const nothing = { badges: [], changes: [], differences: [], kept: false };
    return { id: arm.id, absent: arm.absent, days: 0, engine: "bucket", ...nothing };
  }
  const key = armKey(arm);
  const kept = readable(await store?.read(key), key);
  if (kept !== undefined) return { ...kept, id: arm.id, kept: true };
  const { comparison, tree, id } = arm;
  const { badges, changes, differences } = compare(comparison, { trees: [tree], engine: engineOf(comparison) });
  const { season, engine = "bucket" } = comparison;
  const answer: ArmAnswer = { id, days: season.days, engine, badges, changes, differences, kept: false };
  await store?.write(key, JSON.stringify({ key, answer }));
  return answer;
}

/** The key of an arm's answer in a store. @example armKey(arm).length // 16 */
export function armKey(arm: Extract<ArmBeside, { tree: string }>): string {
  const { name: _, remark: __, ...content } = arm.comparison;
  return contentKey({ version, tree: arm.tree, ...content });
}

function readable(text: string | undefined, key: string): ArmAnswer | undefined {
  if (text === undefined) return undefined;
  try {
    const read: unknown = JSON.parse(text);
    return isKept(read) && read.key === key ? read.answer : undefined;
  } catch {
    return undefined;
  }
}

const isKept = (read: unknown): read is { key: string; answer: ArmAnswer } =>
  typeof read === "object" &&
  read !== null &&
  "key" in read &&
  "answer" in read &&
  typeof read.answer === "object" &&
  read.answer !== null &&
  "differences" in read.answer &&
  Array.isArray(read.answer.differences);
