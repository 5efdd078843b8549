import { readFile } from "node:fs/promises";
import type { Io } from "@rootledger/cli";

/** An Io that keeps what is written and reads from memory first, then from disk. */
export function memoryIo(files: Readonly<Record<string, string>> = {}, nowMs: () => number = () => 0) {
  const written = { stdout: "", stderr: "" };
  const io: Io = {
    stdout: (text) => {
      written.stdout += text;
    },
    stderr: (text) => {
      written.stderr += text;
    },
    readFile: async (path) => {
      const name = Object.keys(files).find((key) => path === key);
      return name === undefined ? readFile(path, "utf8") : (files[name] ?? "");
    },
    nowMs,
  };
  return { io, written };
}
