import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { mkdir, open, readdir, readFile, rename, rm } from "node:fs/promises";
import { dirname } from "node:path";
import { unreadableReason } from "../unreadable-reason.js";
import { type Disk, DiskFault, type NewFile } from "./disk.js";

/** Bytes gathered before they go to the disk. */
const pieceBytes = 1 << 16;

/** The disk of this machine. A file is written beside its name, forced to the disk and then renamed, so that none is ever half there. */
export const nodeDisk: Disk = {
  makeFolder: (folder) => wrap(folder, "write", async () => void (await mkdir(folder, { recursive: true }))),
  list: (folder) => wrap(folder, "read", async () => (await readdir(folder)).sort()),
  read: (path) => wrap(path, "read", () => readFile(path, "utf8")),
  lines,
  digest: (path) =>
    wrap(path, "read", async () => {
      const hash = createHash("sha256");
      let bytes = 0;
      for await (const piece of createReadStream(path)) {
        hash.update(piece);
        bytes += piece.length;
      }
      return { bytes, sha256: hash.digest("hex") };
    }),
  create: (path) => wrap(path, "write", () => create(path)),
  remove: (path) => wrap(path, "write", () => rm(path, { recursive: true, force: true })),
};

async function wrap<T>(path: string, asked: DiskFault["asked"], act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    throw new DiskFault(path, unreadableReason(error), asked);
  }
}

async function* lines(path: string): AsyncGenerator<string> {
  let rest = "";
  try {
    for await (const piece of createReadStream(path, { encoding: "utf8" })) {
      const cut = `${rest}${piece}`.split("\n");
      rest = cut.pop() ?? "";
      yield* cut;
    }
  } catch (error) {
    throw new DiskFault(path, unreadableReason(error), "read");
  }
  if (rest !== "") yield rest;
}

async function create(path: string): Promise<NewFile> {
  const beside = `${path}.part`;
  const file = await open(beside, "w");
  const hash = createHash("sha256");
  let bytes = 0;
  let pieces: Uint8Array[] = [];
  let waiting = 0;
  const flush = async (): Promise<void> => {
    const all = Buffer.concat(pieces);
    pieces = [];
    waiting = 0;
    for (let at = 0; at < all.length; ) at += (await file.write(all, at)).bytesWritten;
  };
  return {
    write: (piece) =>
      wrap(path, "write", async () => {
        const added = typeof piece === "string" ? Buffer.from(piece) : piece;
        hash.update(added);
        bytes += added.length;
        waiting += added.length;
        pieces.push(added);
        if (waiting >= pieceBytes) await flush();
      }),
    keep: () =>
      wrap(path, "write", async () => {
        await flush();
        await file.sync();
        await file.close();
        await rename(beside, path);
        const folder = await open(dirname(path));
        await folder.sync().finally(() => folder.close());
        return { bytes, sha256: hash.digest("hex") };
      }),
    drop: async () => {
      await file.close().catch(() => undefined);
      await rm(beside, { force: true }).catch(() => undefined);
    },
  };
}
