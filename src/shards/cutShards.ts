import type { Utterance } from "../datasets/types.ts";
import { Packed } from "./packed.ts";

/** A run of utterances that follow one another in a dataset's lists: what is done, kept and done again as one. */
export interface Shard {
  readonly index: number;
  /** Place of its first utterance in the dataset. */
  readonly first: number;
  /** How many utterances. */
  readonly count: number;
  readonly utterances: Packed<readonly Utterance[]>;
}

/** Utterances of one shard, on average, unless chosen otherwise. */
export const defaultShardSize = 32;

/** One recording's utterances stay together, so that it is decoded once, up to this many times the usual size. */
const longest = 8;

/**
 * Cuts a dataset by what it holds: after an utterance whose id says so, at a quarter to twice `size` utterances. A new
 * or removed utterance then moves the cuts beside it only, and all other shards stay as they were kept.
 */
export function cutShards(utterances: readonly Utterance[], size: number = defaultShardSize): Shard[] {
  const least = Math.max(1, size >> 2);
  const chance = Math.max(1, size - least);
  const shards: Shard[] = [];
  let first = 0;
  for (let i = 0; i < utterances.length; i++) {
    const count = i + 1 - first;
    const utterance = utterances[i]!;
    const next = utterances[i + 1];
    const together = next !== undefined && next.audio !== null && next.audio === utterance.audio;
    const cut = count >= 2 * size || (count >= least && hashOf(utterance.id) % chance === 0);
    if (next !== undefined && (!cut || (together && count < longest * size))) continue;
    const own = new Packed(utterances.slice(first, i + 1));
    shards.push({ index: shards.length, first, count, utterances: own });
    first = i + 1;
  }
  return shards;
}

/** Utterances in all of them. */
export function countIn(shards: readonly Pick<Shard, "count">[]): number {
  return shards.reduce((sum, { count }) => sum + count, 0);
}

/** FNV-1a of 32 bits, its bits mixed once more. */
function hashOf(id: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < id.length; i++) hash = Math.imul(hash ^ id.charCodeAt(i), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  return (hash ^ (hash >>> 13)) >>> 0;
}
