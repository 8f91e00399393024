import type { Cells } from "../../estimates/cells.ts";
import { labelledCorpora, type TokenTable } from "./corpusTable.ts";
import { corpusWords, type HeardWord, heardWords } from "./corpusWords.ts";
import { devoicingEvidence } from "./devoicingEvidence.ts";
import { devoicingTable } from "./devoicingTable.ts";
import { type DictionaryToken, type DictionaryWords, dictionaryWords } from "./dictionaryWords.ts";
import { type Evidence, indexHeard } from "./evidence.ts";
import { findPairs, type SoundPairs } from "./findPairs.ts";
import { lengthEvidence } from "./lengthEvidence.ts";
import { type Lexicon, type LexiconWord, mergeLexicon } from "./lexicon.ts";
import { accentEntries, type Listed, listedWords } from "./listedWords.ts";

export interface WordSources {
  readonly dictionary: readonly DictionaryToken[];
  readonly tokens: TokenTable;
  readonly cells: Cells;
  /** The user's own words; they win over everything. Default none. */
  readonly list?: readonly Listed[];
  /** A lexicon of accents. Default none: accents are then known only where the list gives them. */
  readonly accents?: readonly Listed[];
  /** Dataset whose evidence counts. Default: the one with most evidence about devoicing. */
  readonly dataset?: string;
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
  readonly heard: readonly HeardWord[];
  readonly datasets: readonly string[];
  readonly unread: DictionaryWords["unread"];
}

/**
 * Brings dictionary, corpus and lists together, finds all pairs and draws up the evidence. Evidence comes from one
 * labelling of one dataset, never pooled; words are heard in all datasets.
 */
export function assembleWords(sources: WordSources): WordMaterial {
  const { list = [], accents = [], level = 0.95, mostMorae } = sources;
  const corpora = labelledCorpora(sources.tokens);
  const heard = corpora.flatMap((corpus) => heardWords(sources.tokens, corpus));
  const { words, unread } = dictionaryWords(sources.dictionary, mostMorae);
  const listed = listedWords(list, { bySurface: wordsOfSurfaces(words, list) });
  const lexicon = mergeLexicon([listed, words, corpusWords(heard)], accentEntries(accents));
  const chosen = corpora.find(({ dataset }) => dataset === sources.dataset) ?? corpora[0];
  const devoicing = devoicingTable(chosen ? devoicingEvidence(sources.tokens, chosen) : null, level);
  const lengths = chosen
    ? lengthEvidence(sources.cells, chosen.dataset, chosen.labelSet, level)
    : { vowels: {}, consonants: {} };
  return {
    lexicon,
    pairs: findPairs(lexicon.bySound),
    evidence: { devoicing, lengths, heard: indexHeard(heard) },
    heard,
    datasets: corpora.map(({ dataset }) => dataset),
    unread,
  };
}

function wordsOfSurfaces(words: readonly LexiconWord[], list: readonly Listed[]): Map<string, LexiconWord[]> {
  const found = new Map<string, LexiconWord[]>(list.map(({ surface }) => [surface, []]));
  if (found.size > 0) for (const word of words) found.get(word.surface)?.push(word);
  return found;
}
