import { createHash } from "node:crypto";
import { type EnsemblePlan, layoutOf, type TalliedPlan } from "rootledger/chance";
import type { Column } from "../print/column.js";
import { jsonText } from "../print/json.js";
import type { Digest } from "./disk.js";
import { memberColumns } from "./member-table.js";
import type { Part } from "./part.js";

/** A column as it is written down. */
export type TableColumn = Omit<Column<never>, "of">;

/** A file of a shard and what it held when it was written. */
export interface PartFile extends Digest {
  readonly name: string;
}

/** What `ensemble` adds to its answer in JSON. */
export interface Said {
  readonly inputsKey: string;
  readonly defaultsUsed: unknown;
  readonly notes: unknown;
}

/** What every shard of one ensemble says alike. */
export interface EnsembleHead extends TalliedPlan {
  readonly format: 1;
  /** Of the library that ran the members. */
  readonly version: string;
  /** SHA-256 of everything that the members depend on: block, soils, weather, programmes, season, start, engine, trees, draws. */
  readonly input: string;
  /** Empty for a table of draws. */
  readonly seed: string;
  /** Of all shards together. */
  readonly members: number;
  readonly columns: readonly TableColumn[];
  /** What the answer says beside the numbers. */
  readonly said: Said;
}

/** What stands in a shard's JSON file. */
export interface PartHead extends Part {
  readonly finished: number;
  readonly failed: number;
  readonly files: readonly PartFile[];
  readonly ensemble: EnsembleHead;
}

/** The head of an ensemble; a pure function of what it is given. */
export function ensembleHead(plan: EnsemblePlan, members: number, version: string, said: Said): EnsembleHead {
  const layout = layoutOf(plan);
  const columns = memberColumns(plan, layout).map(({ of: _, ...column }) => column);
  const { draws, comparison } = plan;
  return {
    ...{ format: 1, version, name: comparison.name, input: sha256(jsonText(plan)) },
    ...{ seed: draws.kind === "priors" ? String(draws.seed) : "", members, columns, said, draws, layout },
  };
}

const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

/** A head or tally as text, with a sum over it, so that a text that was touched is known. */
export const sealed = (content: object): string => {
  const text = jsonText(content);
  return `{"sha256":"${sha256(text)}","content":${text.trimEnd()}}\n`;
};

/** The content of a sealed text, or undefined if it is not what was written. */
export function unsealed(text: string): unknown {
  const [, sum, content] = /^\{"sha256":"([0-9a-f]{64})","content":(.*)\}\n$/s.exec(text) ?? [];
  return content !== undefined && sha256(`${content}\n`) === sum ? JSON.parse(content) : undefined;
}
