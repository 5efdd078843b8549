import { words } from "./words.js";

/** Says on stderr that a worker thread ended before its time; what it had not answered is run by another. */
export const tellWorkerEnded = (reason: string): void => {
  process.stderr.write(`${words.workerEnded}: ${reason}; ${words.leftToOthers}\n`);
};
