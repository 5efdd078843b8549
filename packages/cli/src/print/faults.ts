import type { InputFault } from "../read-input.js";
import { words } from "../words.js";

/** One line per fault: `path: received X; rule`. */
export const faultLines = (faults: readonly InputFault[]): string =>
  faults
    .map(({ path, received, rule }) => `${path === "" ? words.wholeFile : path}: received ${received}; ${rule}\n`)
    .join("");
