import type { Io } from "./io.js";
import { words } from "./words.js";

const quietMs = 2000;

/** A line on stderr at most every two seconds, the first after two; a short job stays silent. */
export function progress(io: Io): (done: string) => void {
  let lastMs = io.nowMs();
  return (done) => {
    const nowMs = io.nowMs();
    if (nowMs - lastMs < quietMs) return;
    lastMs = nowMs;
    io.stderr(`${words.still} ${done}\n`);
  };
}
