import type { HeardWord } from "./corpusWords.ts";
import type { DevoicingTable } from "./devoicingTable.ts";
import type { LengthEvidence } from "./lengthEvidence.ts";
import type { LexiconWord } from "./lexicon.ts";

/** What the corpus tells about words: chances, length ratios, and who said what. */
export interface Evidence {
  readonly devoicing: DevoicingTable;
  readonly lengths: LengthEvidence;
  readonly heard: HeardIndex;
}

/** Every time a word was said, by spelling and sound. */
export type HeardIndex = ReadonlyMap<string, readonly HeardWord[]>;

const keyOf = ({ surface, sound }: { readonly surface: string; readonly sound: string }) =>
  `${surface}\u0000${sound}`;

export function indexHeard(heard: readonly HeardWord[]): HeardIndex {
  const index = new Map<string, HeardWord[]>();
  for (const one of heard) {
    const key = keyOf(one);
    const same = index.get(key);
    if (same === undefined) index.set(key, [one]);
    else same.push(one);
  }
  return index;
}

export function timesHeard(index: HeardIndex, word: LexiconWord): readonly HeardWord[] {
  return index.get(keyOf(word)) ?? [];
}

/** Speakers of several datasets may bear the same label. */
export function speakersOf(heard: readonly HeardWord[]): string[] {
  return [...new Set(heard.map(({ dataset, speaker }) => `${dataset}/${speaker}`))].sort();
}
