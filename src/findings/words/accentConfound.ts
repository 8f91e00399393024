import type { SoundPair } from "./findPairs.ts";
import { isListed, type LexiconWord } from "./lexicon.ts";

/** Whether two words of a pair fall in pitch at the same place; then the accent cannot give them away. */
export type AccentRelation = "same" | "different" | "unknown";

/** Where the accent of `one` lies in `two`, when one mora is added at index `mora`. */
function moved(accent: number, { kind, mora }: SoundPair): number {
  const added = kind === "vowel-length" || kind === "gemination" || kind === "moraic-nasal";
  return added && accent > mora ? accent + 1 : accent;
}

export function accentRelation(one: LexiconWord, two: LexiconWord, pair: SoundPair): AccentRelation {
  if (one.accents === null || two.accents === null) return "unknown";
  return one.accents.some((accent) => two.accents!.includes(moved(accent, pair))) ? "same" : "different";
}

/** Of all homophones on either side, the two words that make the best pair: the user's own, fit, same accent, common; and how their accents stand. */
export function bestWords(
  ones: readonly LexiconWord[],
  twos: readonly LexiconWord[],
  pair: SoundPair,
): { readonly one: LexiconWord; readonly two: LexiconWord; readonly accent: AccentRelation } | null {
  let best: { one: LexiconWord; two: LexiconWord; accent: AccentRelation; rank: number } | null = null;
  for (const one of ones.slice(0, homophonesTried)) {
    if (one.unfit) continue;
    for (const two of twos.slice(0, homophonesTried)) {
      if (two.unfit || two.surface === one.surface) continue;
      const accent = accentRelation(one, two, pair);
      const rank =
        (Number(!isListed(one)) + Number(!isListed(two))) * 1e7 +
        (accent === "same" ? 0 : accent === "unknown" ? 1 : 2) * 1e6 +
        (one.cost ?? rare) +
        (two.cost ?? rare);
      if (best === null || rank < best.rank) best = { one, two, accent, rank };
    }
  }
  return best;
}

/** Homophones come commonest first; rarer ones would not be chosen. */
const homophonesTried = 8;
/** Cost taken for a word that no dictionary holds. */
const rare = 12_000;
