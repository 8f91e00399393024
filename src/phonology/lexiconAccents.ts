import type { ReadWord } from "./readingTypes.ts";

/**
 * Whether each of `morae` morae carries the accent that the user's lexicon gives its word: the mora after which the
 * pitch falls, counted from 1; 0 for a word without a fall. Null for words of which it says nothing or several things,
 * and altogether when it says nothing. It is the word's accent by the dictionary, not what the speaker did.
 */
export function lexiconAccents(words: readonly ReadWord[], morae: number): (boolean | null)[] | null {
  const accents = new Array<boolean | null>(morae).fill(null);
  let known = false;
  for (const { accent, moraStart, moraEnd } of words) {
    if (accent === null || !/^\d{1,2}$/.test(accent)) continue;
    const fall = Number(accent);
    if (fall > moraEnd - moraStart) continue;
    known = true;
    for (let mora = moraStart; mora < moraEnd; mora++) accents[mora] = mora - moraStart === fall - 1;
  }
  return known ? accents : null;
}
