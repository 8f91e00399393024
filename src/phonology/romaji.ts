import type { Mora } from "./kana.ts";
import type { Phone, Vowel } from "./phones.ts";

const macrons: Readonly<Record<Vowel, string>> = { a: "ā", i: "ī", u: "ū", e: "ē", o: "ō" };

const startsWithVowelOrY = (mora: Mora | undefined) => /^[aiueoy]/u.test(mora?.phones[0] ?? "");

/** A geminate doubles the first letter of the consonant, but ッチ is tch; before nothing it is an apostrophe. */
function geminateLetter(next: Phone | undefined): string {
  if (next === undefined || !/^[a-z]/u.test(next) || /^[aiueo]$/u.test(next)) return "'";
  return next === "ch" ? "t" : next === "cl" ? "" : next[0]!;
}

/** Letters of a consonant-vowel mora: `shy` and the like cannot occur, since sh, ch and j carry their own glide. */
const letters = (mora: Mora) => mora.phones.join("");

/**
 * Hepburn romanisation with macrons: `ー` lengthens the vowel before it, ン is n (n' before a vowel or y),
 * ッ doubles the next consonant, a phrase break is a space. Vowels side by side in separate morae stay apart.
 */
export function toRomaji(morae: readonly Mora[]): string {
  let text = "";
  for (const [at, mora] of morae.entries()) {
    const next = mora.breakAfter ? undefined : morae[at + 1];
    if (mora.kind === "nasal") text += startsWithVowelOrY(next) ? "n'" : "n";
    else if (mora.kind === "geminate") text += geminateLetter(next?.phones[0]);
    else if (mora.kind === "long" && mora.vowel !== null && text.endsWith(mora.vowel))
      text = text.slice(0, -1) + macrons[mora.vowel];
    else text += letters(mora);
    if (mora.breakAfter && at < morae.length - 1) text += " ";
  }
  return text;
}

/** The reading again, in katakana; `pause` stands where a phrase may pause. */
export function moraeToKana(morae: readonly Mora[], pause = "、"): string {
  return morae
    .map((mora, at) => mora.kana + (mora.breakAfter && at < morae.length - 1 ? pause : ""))
    .join("");
}
