/** A fresh worker of the one script that computes. */
export const startWorker = (): Worker =>
  new Worker(new URL("./compare.worker.ts", import.meta.url), { type: "module" });
