/** One shard of an ensemble: its number from 1, how many there are, and its members `from` to below `to`. */
export interface Part {
  readonly shard: number;
  readonly shards: number;
  readonly from: number;
  readonly to: number;
}

/** `i/n` as two whole numbers, 1 <= i <= n, or undefined. @example shardOf("3/8") // { shard: 3, shards: 8 } */
export function shardOf(text: string): Pick<Part, "shard" | "shards"> | undefined {
  const [, i, n] = /^(\d{1,9})\/(\d{1,9})$/.exec(text) ?? [];
  const shard = Number(i);
  const shards = Number(n);
  return shard >= 1 && shard <= shards ? { shard, shards } : undefined;
}

/**
 * The members of a shard: neighbours, as many as in any other shard or one less, so that shards one after the other are the
 * whole ensemble in order.
 *
 * @example partOf({ shard: 2, shards: 3 }, 10) // { shard: 2, shards: 3, from: 3, to: 6 }
 */
export const partOf = ({ shard, shards }: Pick<Part, "shard" | "shards">, members: number): Part => ({
  shard,
  shards,
  from: Math.floor((members * (shard - 1)) / shards),
  to: Math.floor((members * shard) / shards),
});

/** Files of a shard without their ending; names sort in the order of the shards. @example partName({ shard: 3, shards: 12 }) // "shard-03-of-12" */
export const partName = ({ shard, shards }: Pick<Part, "shard" | "shards">): string =>
  `shard-${String(shard).padStart(String(shards).length, "0")}-of-${shards}`;
