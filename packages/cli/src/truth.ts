import { fileURLToPath } from "node:url";
import { exit, type Io } from "./io.js";
import { jsonText } from "./print/json.js";
import { truthText } from "./print/truth.js";
import { sound } from "./refused.js";
import type { Asked } from "./run.js";
import { readPublished } from "./truth/read-published.js";

/** Where the project keeps its published checks; a folder given on the command line comes before it. */
const ownFolder = fileURLToPath(new URL("../../../data/published", import.meta.url));

/** `rootledger truth [FOLDER]`. */
export async function truthCommand({ file, output }: Asked, io: Io): Promise<number> {
  const { truth } = sound(await readPublished(file === "" ? ownFolder : file, io));
  io.stdout(output === "json" ? jsonText(truth) : truthText(truth));
  return truth.checks.every(({ pass }) => pass) ? exit.done : exit.faults;
}
