import type { HeardWord } from "./corpusWords.ts";
import { environmentOf, groupOf, vowelsOf, type WordVowel } from "./environment.ts";
import { kanaOfSound, type Sound } from "./sound.ts";

/** A word of the corpus in which a vowel stands in the same, or a like, environment. */
export interface Attested {
  readonly surface: string;
  readonly kana: string;
  /** `word`: the word itself; `sounds`: same C1, vowel and C2; `kinds`: C1 and C2 of the same kinds. */
  readonly likeness: "word" | "sounds" | "kinds";
  readonly tokens: number;
  readonly devoiced: number;
  readonly speakers: number;
}

/**
 * Words said in the corpus whose vowel is nearest to a given one, nearest first, then most speakers. Within them the
 * vowel is seen inside its word alone: the last vowel of a word is passed over, since another word follows in speech.
 */
export function attestedNear(
  sound: Sound,
  vowel: WordVowel,
  heard: readonly HeardWord[],
  most = 6,
): Attested[] {
  const found = new Map<string, Attested & { voices: Set<string> }>();
  for (const one of heard)
    for (const own of vowelsOf(one.sound, null)) {
      const mark = one.devoiced.get(own.mora);
      const likeness = likenessOf(sound, vowel, one.sound, own);
      if (mark === undefined || likeness === null) continue;
      const key = `${likeness} ${one.surface} ${one.sound} ${own.mora}`;
      const known = found.get(key);
      const voices = (known?.voices ?? new Set<string>()).add(`${one.dataset}/${one.speaker}`);
      found.set(key, {
        ...{ surface: one.surface, kana: kanaOfSound(one.sound), likeness },
        tokens: (known?.tokens ?? 0) + 1,
        devoiced: (known?.devoiced ?? 0) + (mark ? 1 : 0),
        speakers: voices.size,
        voices,
      });
    }
  const rank = { word: 0, sounds: 1, kinds: 2 };
  return [...found.values()]
    .sort(
      (a, b) =>
        rank[a.likeness] - rank[b.likeness] ||
        b.speakers - a.speakers ||
        b.tokens - a.tokens ||
        (a.kana < b.kana ? -1 : a.kana > b.kana ? 1 : 0),
    )
    .slice(0, most)
    .map(({ voices: _, ...rest }) => rest);
}

function likenessOf(
  sound: Sound,
  vowel: WordVowel,
  other: Sound,
  own: WordVowel,
): Attested["likeness"] | null {
  if (other === sound && own.mora === vowel.mora) return "word";
  if (own.vowel !== vowel.vowel || own.long !== vowel.long || own.mora === other.length - 1) return null;
  if (own.before === vowel.before && own.after === vowel.after) return "sounds";
  if (!vowel.devoiceable) return null;
  const same = environmentOf({ ...own, accented: null }) === environmentOf({ ...vowel, accented: null });
  return same && groupOf(own.before) === groupOf(vowel.before) ? "kinds" : null;
}
