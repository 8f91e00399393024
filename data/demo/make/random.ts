import { type SeededRandom, seededRandom } from "../../../src/statistics/seededRandom.ts";

/** Seeded numbers that can also choose. */
export interface Random extends SeededRandom {
  /** One element of a list that is not empty. */
  pick<T>(list: readonly T[]): T;
}

/** A sequence of its own for a key, e.g. `1/demo-03-012`, whatever else was drawn before. */
export function randomFor(key: string): Random {
  const random = seededRandom(hash32(key));
  return { ...random, pick: (list) => list[random.below(list.length)]! };
}

/** FNV-1a over UTF-8 bytes. */
function hash32(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash | 0;
}
