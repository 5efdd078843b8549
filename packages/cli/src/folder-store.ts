import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { ArmStore } from "rootledger/compare";

/** Answers as files of a folder, one for each key; written beside and then renamed, so that none is ever half there. */
export function folderStore(folder: string): ArmStore {
  const fileOf = (key: string): string => join(folder, `${key}.json`);
  return {
    read: async (key) => {
      try {
        return await readFile(fileOf(key), "utf8");
      } catch (error) {
        if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
        throw error;
      }
    },
    write: async (key, text) => {
      await mkdir(folder, { recursive: true });
      const beside = `${fileOf(key)}.${process.pid}`;
      await writeFile(beside, text);
      await rename(beside, fileOf(key));
    },
  };
}
