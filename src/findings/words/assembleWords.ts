import type { Cells } from "../../estimates/cells.ts";
import { corpusWords } from "./corpusWords.ts";
import { devoicingTable } from "./devoicingTable.ts";
import { type DictionaryTokens, type DictionaryWords, dictionaryWords } from "./dictionaryWords.ts";
import type { Evidence } from "./evidence.ts";
import { findPairs, type SoundPairs } from "./findPairs.ts";
import { lengthEvidence } from "./lengthEvidence.ts";
import { type Lexicon, type LexiconWord, mergeLexicon } from "./lexicon.ts";
import { accentEntries, type Listed, listedWords } from "./listedWords.ts";
import type { Corpora } from "./readCorpora.ts";
import { withoutFragments } from "./withoutFragments.ts";

export interface WordSources {
  readonly dictionary: DictionaryTokens;
  readonly corpora: Corpora;
  readonly cells: Cells;
  /** The user's own words; they win over everything. Default none. */
  readonly list?: readonly Listed[];
  /** Further spellings that are words, though no dictionary holds them, as those of the lexicon texts were read with. */
  readonly spellings?: Iterable<string>;
  /** A lexicon of accents. Default none: accents are then known only where the list gives them. */
  readonly accents?: readonly Listed[];
  /** Default 0.95. */
  readonly level?: number;
  /** When given, dictionary words that are longer or cannot be proposed are left out: much quicker, for a list. */
  readonly mostMorae?: number;
}

/** All that words are chosen from and judged by. */
export interface WordMaterial {
  readonly lexicon: Lexicon;
  readonly pairs: SoundPairs;
  readonly evidence: Evidence;
  readonly datasets: readonly string[];
  readonly unread: DictionaryWords["unread"];
  /** Spellings of the corpus that were left out, since they are pieces of words (`withoutFragments`). */
  readonly fragments: readonly string[];
}

/**
 * Brings dictionary, corpus and lists together, finds all pairs and draws up the evidence. Evidence comes from one
 * labelling of one dataset, never pooled; words are heard in all datasets.
 */
export function assembleWords(sources: WordSources): WordMaterial {
  const { corpora, list = [], spellings = [], accents = [], level = 0.95, mostMorae } = sources;
  const { words, unread } = dictionaryWords(sources.dictionary, mostMorae);
  const listed = listedWords(list, { bySurface: wordsOfSurfaces(words, list) });
  const own = new Set([...list.map(({ surface }) => surface), ...spellings]);
  const { heard, fragments } = withoutFragments(
    corpora.heard,
    (surface) => own.has(surface) || isSpelt(sources.dictionary, surface),
  );
  const lexicon = mergeLexicon([listed, words, corpusWords(heard)], accentEntries(accents));
  const { chosen } = corpora;
  return {
    lexicon,
    pairs: findPairs(lexicon.bySound),
    evidence: {
      devoicing: devoicingTable(corpora.devoicing, level),
      lengths: chosen
        ? lengthEvidence(sources.cells, chosen.dataset, chosen.labelSet, level)
        : { vowels: {}, consonants: {} },
      heard,
    },
    datasets: corpora.all.map(({ dataset }) => dataset),
    unread,
    fragments,
  };
}

function isSpelt(dictionary: DictionaryTokens, surface: string): boolean {
  if (dictionary.spelt !== undefined) return dictionary.spelt(surface).length > 0;
  for (const token of dictionary) if (token.surface_form === surface) return true;
  return false;
}

function wordsOfSurfaces(words: readonly LexiconWord[], list: readonly Listed[]): Map<string, LexiconWord[]> {
  const found = new Map<string, LexiconWord[]>(list.map(({ surface }) => [surface, []]));
  if (found.size > 0) for (const word of words) found.get(word.surface)?.push(word);
  return found;
}
