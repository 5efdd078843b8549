import { compare } from "rootledger/compare";
import { parseComparison } from "rootledger/scenario";
import { exit, type Io } from "./io.js";
import { comparisonText } from "./print/comparison.js";
import { measuresCsv } from "./print/csv.js";
import { faultLines } from "./print/faults.js";
import { jsonText } from "./print/json.js";
import { progress } from "./progress.js";
import { readInput } from "./read-input.js";
import type { Asked } from "./run.js";

/** `rootledger compare FILE`. */
export async function compareCommand({ file, output, engine }: Asked, io: Io): Promise<number> {
  const input = await readInput(file, io);
  const parsed = input.ok ? parseComparison(input.value, input.files) : input;
  if (!parsed.ok) {
    io.stderr(faultLines(parsed.faults));
    return exit.faults;
  }
  const { defaultsUsed, notes } = parsed;
  const comparison = engine === undefined ? parsed.comparison : { ...parsed.comparison, engine };
  const tell = progress(io);
  const result = compare(comparison, { defaultsUsed, onArm: (done, all) => tell(`${done} of ${all} runs done`) });
  if (output === "json") io.stdout(jsonText({ ...result, notes }));
  else if (output === "csv") io.stdout(measuresCsv(result));
  else io.stdout(comparisonText(result, comparison.weather.name, notes));
  return exit.done;
}
