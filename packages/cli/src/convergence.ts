import { convergence } from "rootledger/compare";
import { exit, type Io } from "./io.js";
import { parseEither } from "./parse-either.js";
import { convergenceText } from "./print/convergence.js";
import { jsonText } from "./print/json.js";
import { progress } from "./progress.js";
import { readInput } from "./read-input.js";
import { sound } from "./refused.js";
import type { Asked } from "./run.js";

/** `rootledger convergence FILE`: what halving the step and the layers changes, and which step is safe. */
export async function convergenceCommand({ file, output }: Asked, io: Io): Promise<number> {
  const parsed = sound(parseEither(await readInput(file, io)));
  const tell = progress(io);
  // The bucket's own convergence, whatever engine the file names.
  const answer = convergence(
    { ...parsed.comparison, engine: "bucket" },
    { onRun: (done, all) => tell(`${done} of ${all} runs done`) },
  );
  io.stdout(output === "json" ? jsonText(answer) : convergenceText(parsed.comparison.name, answer));
  return exit.done;
}
