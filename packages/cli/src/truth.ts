import { fileURLToPath } from "node:url";
import { exit, type Io } from "./io.js";
import { faultLines } from "./print/faults.js";
import { jsonText } from "./print/json.js";
import { truthText } from "./print/truth.js";
import type { Asked } from "./run.js";
import { readPublished } from "./truth/read-published.js";

/** Where the project keeps its published checks; a folder given on the command line comes before it. */
const ownFolder = fileURLToPath(new URL("../../../data/published", import.meta.url));

/** `rootledger truth [FOLDER]`. */
export async function truthCommand({ file, output }: Asked, io: Io): Promise<number> {
  const read = await readPublished(file === "" ? ownFolder : file, io);
  if (!read.ok) {
    io.stderr(faultLines(read.faults));
    return exit.faults;
  }
  const { truth } = read;
  io.stdout(output === "json" ? jsonText(truth) : truthText(truth));
  return truth.checks.every(({ pass }) => pass) ? exit.done : exit.faults;
}
