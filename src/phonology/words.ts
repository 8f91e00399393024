import { kanaToMorae, type Mora } from "./kana.ts";
import type { Vowel } from "./phones.ts";
import type { ReadWord } from "./readingTypes.ts";
import { spellingsOf } from "./spellings.ts";

const vowelKana: Readonly<Record<Vowel, string>> = { a: "ア", i: "イ", u: "ウ", e: "エ", o: "オ" };

/** Morae of a word's reading; one that starts with ー goes on with the vowel before it. */
function moraeOf(reading: string, previous: Mora | undefined): readonly Mora[] {
  if (!reading.startsWith("ー")) return kanaToMorae(reading).morae;
  const vowel = previous?.vowel;
  return vowel ? kanaToMorae(vowelKana[vowel] + reading).morae.slice(1) : [];
}

/** Whether two morae sound alike; エー and エイ, オー and オウ count as one, as readings write them either way. */
function sameMora(own: Mora, given: Mora | undefined): boolean {
  if (!given) return false;
  const spells = (mora: Mora, other: Mora) =>
    spellingsOf(mora).some((phones) => phones.join(" ") === other.phones.join(" "));
  return spells(own, given) || spells(given, own);
}

/** Morae from `at` on that a word takes by each of its readings that fits; longest first. */
function lengthsAt(word: ReadWord, morae: readonly Mora[], at: number): number[] {
  const lengths = [word.reading, ...word.alternatives]
    .map((reading) => moraeOf(reading, morae[at - 1]))
    .filter((own) => own.length > 0 && own.every((mora, offset) => sameMora(mora, morae[at + offset])))
    .map((own) => own.length);
  return [...new Set(lengths)].sort((one, other) => other - one);
}

/**
 * The word (as written) of each mora of a dataset's own reading. The words must spell the whole reading, each by
 * its first reading or an alternative; else null: then nothing is known of the word boundaries.
 */
export function wordOfMora(words: readonly ReadWord[], morae: readonly Mora[]): string[] | null {
  const failed = new Set<number>();
  const place = (word: number, at: number): string[] | null => {
    if (word === words.length) return at === morae.length ? [] : null;
    const key = word * (morae.length + 1) + at;
    if (failed.has(key)) return null;
    for (const length of lengthsAt(words[word]!, morae, at)) {
      const rest = place(word + 1, at + length);
      if (rest) return [...Array<string>(length).fill(words[word]!.surface), ...rest];
    }
    failed.add(key);
    return null;
  };
  return place(0, 0);
}
