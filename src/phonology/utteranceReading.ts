import { readAccent } from "./accent.ts";
import { kanaToMorae, type Mora } from "./kana.ts";

/** How an utterance is pronounced according to its dataset. */
export interface UtteranceReading {
  readonly kana: string;
  readonly morae: readonly Mora[];
  /** Whether each mora carries the accent nucleus; null for a mora, or altogether, where that is unknown. */
  readonly accentOfMora: readonly (boolean | null)[] | null;
}

/**
 * The reading that comes with an utterance; null when there is none or it is not all kana.
 * A phrase written without a fall is flat or accented on its last mora: that mora's accent stays unknown.
 */
export function utteranceReading(
  reading: string | null,
  accentReading: string | null,
): UtteranceReading | null {
  if (accentReading !== null) {
    const { kana, morae, accented, accentPhrase } = readAccent(accentReading);
    return { kana, morae, accentOfMora: accentOfMora(accented, accentPhrase) };
  }
  if (reading === null) return null;
  const { morae, unknown } = kanaToMorae(reading);
  return unknown.length > 0 || morae.length === 0 ? null : { kana: reading, morae, accentOfMora: null };
}

function accentOfMora(accented: readonly boolean[], phraseOf: readonly number[]): (boolean | null)[] {
  const falling = new Set(phraseOf.filter((_, mora) => accented[mora]));
  return accented.map((nucleus, mora) => {
    const last = phraseOf[mora + 1] !== phraseOf[mora];
    return last && !falling.has(phraseOf[mora]!) ? null : nucleus;
  });
}
