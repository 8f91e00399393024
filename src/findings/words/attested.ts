import { environmentOf, groupOf, type WordVowel } from "./environment.ts";
import type { IndexedWord, SaidClip } from "./saidWords.ts";
import type { Sound } from "./sound.ts";

/** A word of the corpus in which a vowel stands in the same, or a like, environment. */
export interface Attested {
  readonly surface: string;
  readonly kana: string;
  /** Index of the mora whose vowel it is. */
  readonly mora: number;
  /** `word`: the word itself; `sounds`: same C1, vowel and C2; `kinds`: C1 and C2 of the same kinds. */
  readonly likeness: "word" | "sounds" | "kinds";
  readonly tokens: number;
  readonly devoiced: number;
  readonly speakers: number;
  readonly clips: readonly SaidClip[];
}

const rank = { word: 0, sounds: 1, kinds: 2 };

/**
 * Words said in the corpus whose vowel is nearest to a given one, nearest first, then most speakers. Within them the
 * vowel is seen inside its word alone: the last vowel of a word is passed over, since another word follows in speech.
 */
export function attestedNear(
  sound: Sound,
  vowel: WordVowel,
  said: readonly IndexedWord[],
  most = 6,
): Attested[] {
  const found: Attested[] = [];
  for (const { word, sound: other, vowels } of said)
    for (const { mora, tokens, devoiced, speakers } of word.marks) {
      const own = vowels.find((one) => one.mora === mora);
      const likeness = own === undefined ? null : likenessOf(sound, vowel, other, own);
      if (likeness === null) continue;
      const { surface, kana, clips } = word;
      found.push({ surface, kana, mora, likeness, tokens, devoiced, speakers, clips });
    }
  return found
    .sort(
      (a, b) =>
        rank[a.likeness] - rank[b.likeness] ||
        b.speakers - a.speakers ||
        b.tokens - a.tokens ||
        (a.kana < b.kana ? -1 : a.kana > b.kana ? 1 : 0),
    )
    .slice(0, most);
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
