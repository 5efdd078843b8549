import { dirname, resolve } from "node:path";
import { filesNamed, type PracticeAccounts, parseNeed, practiceAccounts } from "rootledger/scenario";
import { type Practice, practiceRatios, waterNeed } from "rootledger/tree";
import { exit, type Io } from "./io.js";
import { needFileOf } from "./need-flags.js";
import { jsonText } from "./print/json.js";
import { needText } from "./print/need.js";
import { needTable } from "./print/need-table.js";
import { tableText } from "./print/table.js";
import { readInput } from "./read-input.js";
import { faulty, misused, Refused, sound } from "./refused.js";
import type { Asked } from "./run.js";
import { stationText } from "./station-text.js";
import { words } from "./words.js";

/** `rootledger need FILE`, or the same by options. */
export async function needCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const byOptions = Object.keys(flags).length > 0;
  if (byOptions === (file !== "")) throw misused(words.fileOrOptions);
  const input = byOptions ? { value: needFileOf(flags) } : sound(await readInput(file, io));
  const folder = byOptions ? "" : dirname(resolve(file));
  const files: Record<string, string> = {};
  const seen: string[] = [];
  for (const name of filesNamed(input.value)) {
    const text = await stationText(resolve(folder, name), io);
    if (!text.ok) throw "question" in text ? new Refused(text.question) : faulty(text.faults);
    files[name] = text.text;
    seen.push(...text.notes);
  }
  const parsed = sound(parseNeed(input.value, files));
  const { name, question, practice: given, scenario } = parsed;
  const need = waterNeed(question);
  const practice = practiceRatios(question, given);
  const canopy = question.tree.canopyDiameterM;
  const run = scenario === undefined ? undefined : await runPractices(resolve(folder, scenario), given, canopy, io);
  const notes = [...new Set([...seen, ...parsed.notes, ...(run?.notes ?? [])])];
  const answer = { name, question, need, practice, accounts: run?.accounts ?? [], notes };
  const defaultsUsed = [...parsed.defaultsUsed, ...(run?.defaultsUsed ?? [])];
  if (output === "json") io.stdout(jsonText({ ...answer, defaultsUsed }));
  else if (output !== "table") io.stdout(tableText(needTable(need), output));
  else io.stdout(needText({ ...answer, defaultsUsed }));
  return exit.done;
}

async function runPractices(
  path: string,
  given: readonly Practice[],
  canopyM: number | undefined,
  io: Io,
): Promise<Extract<PracticeAccounts, { ok: true }>> {
  const input = sound(await readInput(path, io));
  const practices = given.map((one) => (canopyM === undefined ? one : { canopyDiameterM: canopyM, ...one }));
  return sound(practiceAccounts(input.value, input.files, practices));
}
