import { readAccent } from "./accent.ts";
import { kanaToMorae, type Mora } from "./kana.ts";

/** How an utterance is pronounced according to its dataset. */
export interface UtteranceReading {
  readonly kana: string;
  readonly morae: readonly Mora[];
  /** Whether each mora carries the accent nucleus; null for a mora, or altogether, where that is unknown. */
  readonly accentOfMora: readonly (boolean | null)[] | null;
  /** `dataset`: written by the dataset's makers; `predicted`: made from the text with the dictionary. */
  readonly from: "dataset" | "predicted";
}

/** What an utterance's dataset says of its pronunciation. */
export interface WrittenUtterance {
  readonly text: string | null;
  readonly reading: string | null;
  readonly accentReading: string | null;
}

/**
 * The reading of an utterance: its dataset's own, else the one `readText` makes from the text; null when there is
 * neither. Kana that cannot be read in full is no reading. A phrase written without a fall is flat or accented on its
 * last mora: that mora's accent stays unknown.
 */
export function readUtterance(
  { text, reading, accentReading }: WrittenUtterance,
  readText: ((text: string) => UtteranceReading | null) | null,
): UtteranceReading | null {
  if (accentReading !== null) {
    const { kana, morae, accented, accentPhrase } = readAccent(accentReading);
    return { kana, morae, accentOfMora: accentOfMora(accented, accentPhrase), from: "dataset" };
  }
  if (reading === null) return text === null || readText === null ? null : readText(text);
  const { morae, unknown } = kanaToMorae(reading);
  if (unknown.length > 0 || morae.length === 0) return null;
  return { kana: reading, morae, accentOfMora: null, from: "dataset" };
}

function accentOfMora(accented: readonly boolean[], phraseOf: readonly number[]): (boolean | null)[] {
  const falling = new Set(phraseOf.filter((_, mora) => accented[mora]));
  return accented.map((nucleus, mora) => {
    const last = phraseOf[mora + 1] !== phraseOf[mora];
    return last && !falling.has(phraseOf[mora]!) ? null : nucleus;
  });
}
