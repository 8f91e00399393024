import { applyLexicon, type Lexicon, makeLexicon } from "./applyLexicon.ts";
import { joinWords } from "./joinWords.ts";
import { readNumbers } from "./numberWords.ts";
import { prepareText } from "./prepareText.ts";
import type { LexiconEntry, ReadingTokenizer, TextReading } from "./readingTypes.ts";
import { settleReadings } from "./settleReadings.ts";
import { tokenizeText } from "./tokenizeText.ts";
import { toPieces } from "./toPieces.ts";

export type { ReadWord, TextReading } from "./readingTypes.ts";

export interface ReadingOptions {
  /** The user's words; they win over everything. */
  readonly lexicon?: readonly LexiconEntry[];
  /** Words whose dictionary reading is not the usual one; see data/reference/reading-corrections.tsv. */
  readonly corrections?: readonly LexiconEntry[];
}

/** A reader that keeps its lexicon prepared, for many texts. */
export function makeReader(
  tokenizer: ReadingTokenizer,
  { lexicon = [], corrections = [] }: ReadingOptions = {},
): (text: string) => TextReading {
  const words: Lexicon = makeLexicon([corrections, lexicon], (surface) => prepareText(surface).text);
  return (original) => {
    const { text, indexOf } = prepareText(original);
    const pieces = applyLexicon(toPieces(tokenizeText(text, tokenizer), tokenizer), words);
    return joinWords(settleReadings(readNumbers(pieces)), original, indexOf);
  };
}

/**
 * Reads Japanese text as a dictionary and rules of pronunciation tell: particles ワ エ オ, long vowels inside
 * morphemes, numbers with counters, iteration marks. What has no reading is listed in `unread`, never guessed.
 * A reading is a prediction from text: which alternative was spoken, the recording must decide.
 */
export function readText(
  text: string,
  tokenizer: ReadingTokenizer,
  options: ReadingOptions = {},
): TextReading {
  return makeReader(tokenizer, options)(text);
}
