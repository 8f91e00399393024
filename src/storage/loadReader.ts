import { makeReader, type TextReading } from "../phonology/reading.ts";
import { loadTokenizer } from "./loadTokenizer.ts";
import { readLexicon, readReadingCorrections } from "./readLexicon.ts";

/**
 * Everything that reading text needs, loaded once: dictionary, the project's corrections and, if given, the
 * user's lexicon. Takes about a second and 300 MB.
 */
export async function loadReader(lexiconPath: string | null = null): Promise<(text: string) => TextReading> {
  const [tokenizer, corrections, lexicon] = await Promise.all([
    loadTokenizer(),
    readReadingCorrections(),
    lexiconPath === null ? [] : readLexicon(lexiconPath),
  ]);
  return makeReader(tokenizer, { corrections, lexicon });
}
