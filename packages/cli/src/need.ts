import { parseNeed } from "rootledger/scenario";
import { practiceRatios, waterNeed } from "rootledger/tree";
import { exit, type Io } from "./io.js";
import { needFileOf } from "./need-flags.js";
import { needCsv } from "./print/csv.js";
import { faultLines } from "./print/faults.js";
import { jsonText } from "./print/json.js";
import { needText } from "./print/need.js";
import { readInput } from "./read-input.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

/** `rootledger need FILE`, or the same by options. */
export async function needCommand({ file, output, flags }: Asked, io: Io): Promise<number> {
  const byOptions = Object.keys(flags).length > 0;
  if (byOptions === (file !== "")) {
    io.stderr(`${words.fileOrOptions}; ${words.seeHelp}\n`);
    return exit.faults;
  }
  const input = byOptions ? ({ ok: true, value: needFileOf(flags) } as const) : await readInput(file, io);
  const parsed = input.ok ? parseNeed(input.value) : input;
  if (!parsed.ok) {
    io.stderr(faultLines(parsed.faults));
    return exit.faults;
  }
  const { name, question, defaultsUsed } = parsed;
  const need = waterNeed(question);
  const practice = practiceRatios(question, parsed.practice);
  if (output === "json") io.stdout(jsonText({ name, question, need, practice, defaultsUsed }));
  else if (output === "csv") io.stdout(needCsv(need));
  else io.stdout(needText(name, question, need, practice, defaultsUsed));
  return exit.done;
}
