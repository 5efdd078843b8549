#!/usr/bin/env node
import { readFile } from "node:fs/promises";
import { adviceWorkers } from "./advice-workers.js";
import { folderStore } from "./folder-store.js";
import { exit } from "./io.js";
import { nodeWorkers } from "./node-workers.js";
import { main } from "./run.js";
import { nodeDisk } from "./shards/node-disk.js";
import { words } from "./words.js";

// A reader that has seen enough (`| head`) ends the command quietly; where nothing can be written, it says so.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(exit.done);
  process.stderr.write(`${words.cannotWrite}: ${error.message}\n`);
  process.exit(exit.internal);
});

process.exitCode = await main(process.argv.slice(2), {
  stdout: (text) => process.stdout.write(text),
  stderr: (text) => process.stderr.write(text),
  readFile: (path) => readFile(path, "utf8"),
  readBytes: (path) => readFile(path),
  nowMs: () => performance.now(),
  workers: nodeWorkers,
  adviceWorkers,
  store: folderStore,
  disk: nodeDisk,
});
