import type { Digest, Disk } from "./disk.js";

/** Writes a whole text under a name. */
export async function writeText(disk: Disk, path: string, text: string): Promise<Digest> {
  const file = await disk.create(path);
  try {
    await file.write(text);
    return await file.keep();
  } catch (error) {
    await file.drop();
    throw error;
  }
}
