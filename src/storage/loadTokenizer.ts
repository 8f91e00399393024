import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import kuromoji, { type IpadicFeatures, type Tokenizer } from "kuromoji";
import type { ReadingToken, ReadingTokenizer } from "../phonology/readingTypes.ts";

/** Folder of the dictionary that comes with the installed package, wherever that is. */
const dictionaryFolder = () =>
  join(dirname(createRequire(import.meta.url).resolve("kuromoji/package.json")), "dict");

interface TrieMatch {
  readonly k: string;
  readonly v: number;
}

/** Entries of the dictionary with exactly this surface, read from the analyser's own tables. */
function entriesOf(tokenizer: Tokenizer<IpadicFeatures>, surface: string): ReadingToken[] {
  const words = tokenizer.token_info_dictionary as unknown as {
    target_map: Record<number, readonly number[]>;
  };
  const trie = tokenizer.viterbi_builder.trie as unknown as { commonPrefixSearch(text: string): TrieMatch[] };
  return trie
    .commonPrefixSearch(surface)
    .filter((match) => match.k === surface)
    .flatMap((match) => words.target_map[match.v] ?? [])
    .map((id) =>
      tokenizer.formatter.formatEntry(
        id,
        0,
        "KNOWN",
        tokenizer.token_info_dictionary.getFeatures(`${id}`).split(","),
      ),
    );
}

/** Words whose entries are remembered, some 10 MB: a corpus of hundreds of hours has many more. */
const mostSurfaces = 10_000;

/**
 * Loads the dictionary once (about a second, some 300 MB) and gives the analyser that readings need.
 * Rejects when the package's dictionary files are missing or damaged.
 */
export async function loadTokenizer(): Promise<ReadingTokenizer> {
  const tokenizer = await new Promise<Tokenizer<IpadicFeatures>>((resolve, reject) =>
    kuromoji
      .builder({ dicPath: dictionaryFolder() })
      .build((error, built) => (error ? reject(error) : resolve(built))),
  );
  const cache = new Map<string, readonly ReadingToken[]>();
  return {
    tokenize: (text) => tokenizer.tokenize(text),
    entries(surface) {
      const known = cache.get(surface);
      if (known) return known;
      const entries = entriesOf(tokenizer, surface);
      if (cache.size >= mostSurfaces) cache.clear();
      cache.set(surface, entries);
      return entries;
    },
  };
}
