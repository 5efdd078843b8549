import { parseComparison, parseScenario } from "rootledger/scenario";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { wrapped } from "./print/text-table.js";
import { readInput } from "./read-input.js";
import { sound } from "./refused.js";
import type { Asked } from "./run.js";
import { words } from "./words.js";

/** `rootledger validate-scenario FILE`: a file with a list of soils or programmes is taken for a comparison. */
export async function validateCommand({ file, output }: Asked, io: Io): Promise<number> {
  const { value, files } = sound(await readInput(file, io));
  const kind = looksLikeComparison(value) ? "comparison" : "scenario";
  const { defaultsUsed, notes } = sound(
    kind === "comparison" ? parseComparison(value, files) : parseScenario(value, files),
  );
  if (output === "json") io.stdout(jsonText({ file, kind, defaultsUsed, notes }));
  else {
    io.stdout(
      `${file}: ${words.valid[kind]}\n${words.defaults}${defaultsUsed.length === 0 ? `: ${words.noDefaults}` : ""}\n`,
    );
    for (const { path, value, source } of defaultsUsed)
      io.stdout(wrapped(`${path} ${value} (${source})`, "    ", "  "));
    for (const note of notes) io.stdout(wrapped(note, "    ", "  "));
  }
  return exit.done;
}

const looksLikeComparison = (value: unknown): boolean =>
  typeof value === "object" && value !== null && ("soils" in value || "programmes" in value);
