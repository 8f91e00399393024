import { applyLexicon, type Lexicon, makeLexicon } from "./applyLexicon.ts";
import { joinWords } from "./joinWords.ts";
import type { Mora } from "./kana.ts";
import { readNumbers } from "./numberWords.ts";
import { prepareText } from "./prepareText.ts";
import { tokenReadings } from "./pronounceToken.ts";
import type { LexiconEntry, Piece, ReadingToken, ReadingTokenizer } from "./readingTypes.ts";
import { settleReadings } from "./settleReadings.ts";

/** A word of the text with its place in the morae. */
export interface ReadWord {
  readonly surface: string;
  /** Katakana as pronounced; may start with ー, where a vowel of the word before goes on. */
  readonly reading: string;
  /** Morae of the word: from `moraStart` up to, not including, `moraEnd`. */
  readonly moraStart: number;
  readonly moraEnd: number;
  readonly partOfSpeech: string;
  /** Other readings of the word in katakana; which one was spoken only the recording can tell. */
  readonly alternatives: readonly string[];
  /** Accent from the user's lexicon as written there; null when it says none. */
  readonly accent: string | null;
}

export interface TextReading {
  readonly words: readonly ReadWord[];
  readonly morae: readonly Mora[];
  /** The whole reading in katakana, `、` where the phrase may pause. */
  readonly kana: string;
  /** Stretches without a reading (Latin, rare names, unknown symbols), with their UTF-16 offset in the text. */
  readonly unread: readonly { readonly index: number; readonly text: string }[];
}

export interface ReadingOptions {
  /** The user's words; they win over everything. */
  readonly lexicon?: readonly LexiconEntry[];
  /** Words whose dictionary reading is not the usual one; see data/reference/reading-corrections.tsv. */
  readonly corrections?: readonly LexiconEntry[];
}

const separators = /^[\p{White_Space}\p{P}～〜♪♡☆★…]+$/u;

function toPieces(tokens: readonly ReadingToken[], tokenizer: ReadingTokenizer): Piece[] {
  let start = 0;
  return tokens.map((token) => {
    const { surface_form: surface, pos, pos_detail_1: detail, pos_detail_2: detail2 } = token;
    const end = start + surface.length;
    const readings = tokenReadings(token, tokenizer);
    const isBreak = readings.length === 0 && separators.test(surface);
    const piece = { start, end, surface, pos, detail, detail2, readings, isBreak, accent: null };
    start = end;
    return piece;
  });
}

/** A reader that keeps its lexicon prepared, for many texts. */
export function makeReader(
  tokenizer: ReadingTokenizer,
  { lexicon = [], corrections = [] }: ReadingOptions = {},
): (text: string) => TextReading {
  const words: Lexicon = makeLexicon([corrections, lexicon], (surface) => prepareText(surface).text);
  return (original) => {
    const { text, indexOf } = prepareText(original);
    const pieces = applyLexicon(toPieces(tokenizer.tokenize(text), tokenizer), words);
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
