import { type KatakanaLetter, toKatakanaLetters } from "./katakana.ts";
import { moraTable } from "./moraTable.ts";
import { isVowel, type Phone, type Vowel } from "./phones.ts";

/** One mora. Its kana is full-width katakana, `ー` for the second half of a long vowel. */
export interface Mora {
  readonly kana: string;
  /** A long mora repeats the vowel before it; ン is [N], ッ is [cl]. */
  readonly phones: readonly Phone[];
  readonly kind: "cv" | "long" | "geminate" | "nasal";
  /** Whether the reading has a separator (space, comma, full stop …) after this mora. */
  readonly breakAfter: boolean;
  /** Vowel of the mora, null for ン and ッ. */
  readonly vowel: Vowel | null;
}

export interface KanaReading {
  readonly morae: Mora[];
  /** Stretches that are neither kana nor separator, with their UTF-16 offset in the text. */
  readonly unknown: { readonly index: number; readonly text: string }[];
}

const separator = /[\p{White_Space}\p{P}＝=|~〜～♪♡☆★…+]/u;
const smallVowel = /^[ァィゥェォ]$/u;

const lastVowel = (phones: readonly Phone[]): Vowel | null => {
  const last = phones.at(-1);
  return last !== undefined && isVowel(last) ? last : null;
};

function cv(kana: string, phones: readonly Phone[], previous: Mora | undefined): Mora {
  const vowel = lastVowel(phones);
  const lengthens = smallVowel.test(kana) && previous?.vowel === vowel && !previous.breakAfter;
  return { kana, phones, kind: lengthens ? "long" : "cv", breakAfter: false, vowel };
}

/** ー repeats the vowel before it and lengthens ン; after ッ or at the start it has nothing to lengthen. */
function lengthen(previous: Mora | undefined): Mora | null {
  if (previous?.kind === "nasal") return { ...previous, kana: "ー", breakAfter: false };
  if (!previous?.vowel) return null;
  return { kana: "ー", phones: [previous.vowel], kind: "long", breakAfter: false, vowel: previous.vowel };
}

function readMora(letters: readonly KatakanaLetter[], at: number, previous: Mora | undefined): Mora | null {
  const letter = letters[at]!.text;
  const pair = letter + (letters[at + 1]?.text ?? "");
  const pairPhones = moraTable.get(pair);
  if (pair !== letter && pairPhones) return cv(pair, pairPhones, previous);
  const phones = moraTable.get(letter);
  if (phones) return cv(letter, phones, previous);
  if (letter === "ン") return { kana: letter, phones: ["N"], kind: "nasal", breakAfter: false, vowel: null };
  if (letter === "ッ")
    return { kana: letter, phones: ["cl"], kind: "geminate", breakAfter: false, vowel: null };
  return letter === "ー" ? lengthen(previous) : null;
}

/**
 * Morae of a reading in hiragana or katakana, full or half width. ー and a small vowel after the same vowel
 * make a `long` mora; オウ, エイ and other full-size vowels stay `cv`: whether they are long is the word's
 * matter. Space and punctuation set `breakAfter`. What is neither is listed in `unknown`, never guessed.
 */
export function kanaToMorae(kana: string): KanaReading {
  const letters = toKatakanaLetters(kana);
  const morae: Mora[] = [];
  const unknown: { index: number; text: string }[] = [];
  let unknownEnd = -1;
  for (let at = 0; at < letters.length; at++) {
    const { text, index } = letters[at]!;
    const mora = readMora(letters, at, morae.at(-1));
    if (mora) {
      morae.push(mora);
      at += [...mora.kana].length - 1;
    } else if (separator.test(text)) {
      const last = morae.at(-1);
      if (last) morae[morae.length - 1] = { ...last, breakAfter: true };
    } else if (unknownEnd === at) {
      const open = unknown.at(-1)!;
      unknown[unknown.length - 1] = { ...open, text: open.text + text };
      unknownEnd = at + 1;
    } else {
      unknown.push({ index, text });
      unknownEnd = at + 1;
    }
  }
  return { morae, unknown };
}
