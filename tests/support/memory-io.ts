import { readFile } from "node:fs/promises";
import type { Io } from "@rootledger/cli";

/** An Io that keeps what is written and reads from memory first, then from disk. */
export function memoryIo(files: Readonly<Record<string, string | Uint8Array>> = {}, nowMs: () => number = () => 0) {
  const written = { stdout: "", stderr: "" };
  const io: Io = {
    stdout: (text) => {
      written.stdout += text;
    },
    stderr: (text) => {
      written.stderr += text;
    },
    readFile: async (path) =>
      path in files ? Buffer.from(files[path] ?? "").toString("utf8") : readFile(path, "utf8"),
    readBytes: async (path) => (path in files ? new Uint8Array(Buffer.from(files[path] ?? "")) : readFile(path)),
    nowMs,
  };
  return { io, written };
}
