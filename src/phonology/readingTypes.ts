import type { Mora } from "./kana.ts";

/** What readings need of a dictionary word; the names are those of kuromoji's IPADIC tokens. */
export interface ReadingToken {
  readonly surface_form: string;
  readonly pos: string;
  readonly pos_detail_1: string;
  readonly pos_detail_2: string;
  readonly basic_form: string;
  readonly reading?: string | undefined;
  readonly pronunciation?: string | undefined;
}

/** A morphological analyser with its dictionary; loaded outside, since this stage reads no files. */
export interface ReadingTokenizer {
  /** Words in order; their surfaces join to the text. */
  tokenize(text: string): readonly ReadingToken[];
  /** Every dictionary word that is written so. */
  entries(surface: string): readonly ReadingToken[];
}

/** A word whose reading is given: by the user's lexicon, or by the project's corrections. */
export interface LexiconEntry {
  readonly surface: string;
  /** Kana as pronounced. */
  readonly reading: string;
  /** As the user wrote it; null when not given. */
  readonly accent: string | null;
  /** Other readings, in kana. */
  readonly alternatives?: readonly string[];
}

/** A stretch of text with its possible readings, the likeliest first; none when nothing tells how it is read. */
export interface Piece {
  /** UTF-16 offsets in the prepared text. */
  readonly start: number;
  readonly end: number;
  readonly surface: string;
  readonly pos: string;
  readonly detail: string;
  readonly detail2: string;
  readonly readings: readonly string[];
  /** A separator: no sound, but a place where the phrase may pause. */
  readonly isBreak: boolean;
  readonly accent: string | null;
}

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
