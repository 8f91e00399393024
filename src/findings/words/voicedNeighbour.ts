import type { Lexicon, LexiconWord } from "./lexicon.ts";
import { phonesOfUnit, type Sound, unitOf } from "./sound.ts";

/** Voiced partners of voiceless consonants; h, f and p all pair with b, as kana write them. */
const voiced: Readonly<Record<string, string>> = {
  ...{ k: "g", ky: "gy", kw: "gw", s: "z", sh: "j", t: "d", ty: "dy", ch: "j", ts: "z" },
  ...{ h: "b", hy: "by", f: "b", p: "b", py: "by" },
};

/**
 * A word that differs only in the voicing of the consonant after the vowel at index `mora`, so that the vowel is not
 * whispered there (シタ 下, シダ 羊歯): the commonest that can be said alone, null when there is none.
 */
export function voicedNeighbour(sound: Sound, mora: number, lexicon: Lexicon): LexiconWord | null {
  const [consonant, vowel] = phonesOfUnit(sound[mora + 1] ?? "");
  const partner = consonant === undefined ? undefined : voiced[consonant];
  if (partner === undefined || vowel === undefined) return null;
  const unit = unitOf(partner, vowel);
  if (unit === undefined) return null;
  const other = sound.slice(0, mora + 1) + unit + sound.slice(mora + 2);
  const found = lexicon.bySound.get(other)?.[0];
  return found === undefined || found.unfit ? null : found;
}
