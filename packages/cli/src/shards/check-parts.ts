import type { InputFault } from "../read-input.js";
import { shardWords as words } from "../words-shards.js";
import type { FoundPart } from "./read-part.js";

/** Faults listed of one kind at most; our choice. */
const mostNamed = 20;

/** What keeps shards from being one ensemble: other versions, inputs, seeds or sizes, one twice, one absent. */
export function partFaults(parts: readonly FoundPart[], version: string, folders: string): InputFault[] {
  const [first] = parts;
  if (first === undefined) return [{ path: folders, received: words.noJson, rule: words.noShards }];
  const faults = parts.flatMap((part): InputFault[] => {
    const said = differing(first, part);
    if (said !== undefined) {
      const rule = `${words.sameAs} ${first.path} ${said.first}`;
      return [{ path: `${part.path} ${said.name}`, received: said.here, rule }];
    }
    if (part.ensemble.version === version) return [];
    return [{ path: part.path, received: part.ensemble.version, rule: `${words.thisVersion} ${version}` }];
  });
  if (faults.length > 0) return faults.slice(0, mostNamed);
  const seen = new Map<number, string>();
  for (const { shard, path } of parts) {
    const before = seen.get(shard);
    if (before !== undefined) {
      faults.push({ path, received: `${words.shard} ${shard}`, rule: `${words.once} ${before}` });
    }
    seen.set(shard, path);
  }
  const absent = Array.from({ length: first.shards }, (_, i) => i + 1).filter((shard) => !seen.has(shard));
  if (absent.length > 0) {
    const named = absent.slice(0, mostNamed).join(", ");
    const rule = `${words.all} ${named}${absent.length > mostNamed ? ", ..." : ""}`;
    faults.push({ path: folders, received: `${seen.size} of ${first.shards}`, rule });
  }
  return faults;
}

/** The first thing that two shards do not say alike; the input's sum holds seed and draws, so the seed is looked at before. */
function differing(first: FoundPart, part: FoundPart): { name: string; here: string; first: string } | undefined {
  if (first.ensemble === part.ensemble && first.shards === part.shards) return undefined;
  const saying = ({ shards, ensemble }: FoundPart): Record<string, string> => ({
    shards: String(shards),
    version: ensemble.version,
    members: String(ensemble.members),
    seed: ensemble.seed,
    input: ensemble.input,
    rest: JSON.stringify({ ...ensemble, draws: "" }),
  });
  const [a, b] = [saying(first), saying(part)];
  const name = Object.keys(a).find((key) => a[key] !== b[key]);
  return name === undefined ? undefined : { name, here: b[name] ?? "", first: a[name] ?? "" };
}
