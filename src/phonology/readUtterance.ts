import { readAccent } from "./accent.ts";
import { kanaToMorae, type Mora } from "./kana.ts";
import { lexiconAccents } from "./lexiconAccents.ts";
import type { ReadWord, TextReading } from "./readingTypes.ts";
import { wordOfMora as wordsOf } from "./words.ts";

/** How an utterance is pronounced according to its dataset. */
export interface UtteranceReading {
  readonly kana: string;
  readonly morae: readonly Mora[];
  /** Whether each mora carries the accent nucleus; null for a mora, or altogether, where that is unknown. */
  readonly accentOfMora: readonly (boolean | null)[] | null;
  /** `dataset`: written by the dataset's makers; `predicted`: made from the text with the dictionary. */
  readonly from: "dataset" | "predicted";
  /** In order and apart from one another; none where the dataset gives the reading. */
  readonly choices: readonly ReadingChoice[];
}

/** A word that the dictionary reads in other ways too; which one was spoken only the recording can tell. */
export interface ReadingChoice {
  /** Morae of the word in the reading: from `moraStart` up to, not including, `moraEnd`. */
  readonly moraStart: number;
  readonly moraEnd: number;
  readonly others: readonly (readonly Mora[])[];
}

/** What an utterance's dataset says of its pronunciation. */
export interface WrittenUtterance {
  readonly text: string | null;
  readonly reading: string | null;
  readonly accentReading: string | null;
}

export interface UtteranceRead {
  /** Null when there is no reading: then `unread` says which stretches of the text have none. */
  readonly reading: UtteranceReading | null;
  /** Word, as written, of each mora of the reading; null where the text does not spell the reading. */
  readonly wordOfMora: readonly string[] | null;
  /** Words of a reading that was made from the text, for when another of their readings was spoken. */
  readonly words: readonly ReadWord[];
  readonly unread: readonly string[];
}

/**
 * How an utterance is read, and which word each mora stands in. The dataset's own reading wins; without one,
 * `readText` makes it from the text, all of it or none. Kana that cannot be read in full is no reading. A phrase
 * written without a fall is flat or accented on its last mora: that mora's accent stays unknown.
 */
export function readUtterance(
  { text, reading, accentReading }: WrittenUtterance,
  readText: ((text: string) => TextReading) | null,
): UtteranceRead {
  const fromText = text === null || readText === null ? null : readText(text);
  const written = writtenReading(reading, accentReading);
  if (written !== null) {
    const wordOfMora = fromText === null ? null : wordsOf(fromText.words, written.morae);
    return { reading: written, wordOfMora, words: [], unread: [] };
  }
  if (fromText === null) {
    const given = accentReading ?? reading;
    return { reading: null, wordOfMora: null, words: [], unread: given === null ? [] : [given] };
  }
  const { kana, morae, words, unread } = fromText;
  if (unread.length > 0 || morae.length === 0)
    return {
      ...{ reading: null, wordOfMora: null, words: [] },
      unread: unread.length > 0 ? unread.map((stretch) => stretch.text) : [text!], // of pauses alone
    };
  return {
    reading: {
      kana,
      morae,
      accentOfMora: lexiconAccents(words, morae.length),
      from: "predicted",
      choices: choicesOf(words),
    },
    wordOfMora: wordsOf(words, morae),
    words,
    unread: [],
  };
}

/** A reading that begins with ー goes on with the word before: it is no choice of its own. */
function choicesOf(words: readonly ReadWord[]): ReadingChoice[] {
  return words.flatMap(({ reading, moraStart, moraEnd, alternatives }) => {
    const others = [...new Set(alternatives)]
      .filter((kana) => kana !== reading && !kana.startsWith("ー"))
      .map((kana) => kanaToMorae(kana))
      .filter(({ morae, unknown }) => morae.length > 0 && unknown.length === 0)
      .map(({ morae }) => morae);
    return others.length === 0 || moraEnd <= moraStart || reading.startsWith("ー")
      ? []
      : [{ moraStart, moraEnd, others }];
  });
}

function writtenReading(reading: string | null, accentReading: string | null): UtteranceReading | null {
  if (accentReading !== null) {
    const { kana, morae, accented, accentPhrase } = readAccent(accentReading);
    return { kana, morae, accentOfMora: accentOfMora(accented, accentPhrase), from: "dataset", choices: [] };
  }
  if (reading === null) return null;
  const { morae, unknown } = kanaToMorae(reading);
  if (unknown.length > 0 || morae.length === 0) return null;
  return { kana: reading, morae, accentOfMora: null, from: "dataset", choices: [] };
}

function accentOfMora(accented: readonly boolean[], phraseOf: readonly number[]): (boolean | null)[] {
  const falling = new Set(phraseOf.filter((_, mora) => accented[mora]));
  return accented.map((nucleus, mora) => {
    const last = phraseOf[mora + 1] !== phraseOf[mora];
    return last && !falling.has(phraseOf[mora]!) ? null : nucleus;
  });
}
