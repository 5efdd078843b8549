#!/usr/bin/env node
import { readFile } from "node:fs/promises";
import { adviceWorkers } from "./advice-workers.js";
import { folderStore } from "./folder-store.js";
import { nodeWorkers } from "./node-workers.js";
import { main } from "./run.js";
import { nodeDisk } from "./shards/node-disk.js";

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
