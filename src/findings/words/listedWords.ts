import type { AccentEntry, Lexicon, LexiconWord } from "./lexicon.ts";
import { soundOf, spellingKey } from "./sound.ts";

/** A line of a word list or accent lexicon, as the storage toolbox reads it. */
export interface Listed {
  readonly surface: string;
  readonly reading: string;
  readonly accents: readonly number[] | null;
  readonly gloss: string | null;
  readonly level: string | null;
}

/**
 * Words of a user's list. A reading in ordinary kana (とうきょう) is brought to its sound by the dictionary's word of
 * the same spelling; without one it is taken as it is written. Lines must hold kana.
 */
export function listedWords(list: readonly Listed[], dictionary: Pick<Lexicon, "bySurface">): LexiconWord[] {
  return list.flatMap(({ surface, reading, accents, gloss, level }) => {
    const written = soundOf(reading);
    if (written === null) return [];
    const key = spellingKey(written);
    const known = dictionary.bySurface.get(surface)?.find(({ sound }) => spellingKey(sound) === key);
    return [
      {
        surface,
        sound: known?.sound ?? written,
        partOfSpeech: null,
        unfit: false,
        cost: null,
        accents,
        gloss,
        level,
        sources: ["list" as const],
      },
    ];
  });
}

/** Accents of a list: only lines that give one. */
export function accentEntries(list: readonly Listed[]): AccentEntry[] {
  return list.flatMap(({ surface, reading, accents }) => {
    const sound = accents === null ? null : soundOf(reading);
    return sound === null || accents === null ? [] : [{ surface, sound, accents }];
  });
}
