import { version } from "rootledger";
import { createTally, type EnsembleResult, talliedResult } from "rootledger/chance";
import { exit, type Io } from "./io.js";
import { ensembleText } from "./print/ensemble.js";
import { jsonText } from "./print/json.js";
import { ensembleTable } from "./print/measure-tables.js";
import { tableText } from "./print/table.js";
import type { InputFault } from "./read-input.js";
import { faulty, sound } from "./refused.js";
import type { Asked } from "./run.js";
import { partFaults } from "./shards/check-parts.js";
import { type Disk, DiskFault } from "./shards/disk.js";
import type { EnsembleHead } from "./shards/head.js";
import { mergeTables } from "./shards/merge-tables.js";
import { type FoundPart, fileFaults, partsIn, readPart, readTally } from "./shards/read-part.js";
import { shardWords as words } from "./words-shards.js";

/** Options of `merge`. */
export const mergeFlags = ["out"] as const;

/** `rootledger merge FOLDER [FOLDER ...]`: the answer of an ensemble that was run in shards, the same as if it had been run at once. */
export async function mergeCommand({ file, moreFiles, output, flags }: Asked, io: Io): Promise<number> {
  const { disk } = io;
  if (disk === undefined) throw new Error(words.noDisk);
  try {
    const { parts } = sound(await readParts(disk, [file, ...moreFiles]));
    const { out } = flags;
    if (out !== undefined) await mergeTables(disk, parts, out);
    const { result, said } = await answerOf(disk, parts);
    if (output === "json") io.stdout(jsonText({ ...result, ...said }));
    else io.stdout(output === "table" ? ensembleText(result) : tableText(ensembleTable(result), output));
    return exit.done;
  } catch (error) {
    if (!(error instanceof DiskFault)) throw error;
    throw faulty([diskFault(error)]);
  }
}

/** A disk's refusal as a fault of the input. */
export const diskFault = ({ path, reason, asked }: DiskFault): InputFault => ({
  ...{ path, received: reason, rule: asked === "read" ? words.readable : words.writable },
});

type PartsRead =
  | { readonly ok: true; readonly parts: readonly [FoundPart, ...FoundPart[]] }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

async function readParts(disk: Disk, folders: readonly string[]): Promise<PartsRead> {
  const parts: FoundPart[] = [];
  const faults: InputFault[] = [];
  // What all shards say alike is held once, however many they are.
  const heads = new Map<string, EnsembleHead>();
  for (const folder of folders) {
    for (const path of await partsIn(disk, folder)) {
      const read = await readPart(disk, folder, path);
      if (!read.ok) {
        faults.push(read.fault);
        continue;
      }
      const text = jsonText(read.part.ensemble);
      const ensemble = heads.get(text) ?? read.part.ensemble;
      heads.set(text, ensemble);
      parts.push({ ...read.part, ensemble });
    }
  }
  if (faults.length > 0) return { ok: false, faults };
  const unlike = partFaults(parts, version, folders.join(", "));
  if (unlike.length > 0) return { ok: false, faults: unlike };
  const [first, ...rest] = parts.sort((a, b) => a.shard - b.shard);
  for (const part of parts) faults.push(...(await fileFaults(disk, part)));
  return faults.length > 0 || first === undefined ? { ok: false, faults } : { ok: true, parts: [first, ...rest] };
}

async function answerOf(disk: Disk, parts: readonly [FoundPart, ...FoundPart[]]) {
  const { ensemble } = parts[0];
  const tally = createTally(ensemble.layout);
  for (const part of parts) tally.merge(await readTally(disk, part));
  const result: EnsembleResult = talliedResult(ensemble, tally.plain(), ensemble.members);
  return { result, said: ensemble.said };
}
