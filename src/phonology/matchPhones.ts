import type { Mora } from "./kana.ts";
import type { Phone } from "./phones.ts";

/** A label phone without pauses: the phone alone, or with the length its label writes (`a:`). */
export type LabelPhone = Phone | { readonly phone: Phone; readonly long: boolean };

/** Where labels and reading part: the label phone (index from 0) and what the reading expects there. */
export interface PhoneDifference {
  readonly index: number;
  readonly expected: Phone | null;
  readonly found: Phone | null;
  /** Index of the mora concerned; null after the end of the reading. */
  readonly mora: number | null;
}

/** Other symbols that label sets write for the same kana: ヂ ヅ by their letters, ティ and ディ with a glide. */
const spellings: Readonly<Record<string, readonly Phone[]>> = {
  ヂ: ["d", "dy"],
  ヂャ: ["d", "dy"],
  ヂュ: ["d", "dy"],
  ヂョ: ["d", "dy"],
  ヅ: ["d"],
  ティ: ["ty"],
  ディ: ["dy"],
};

function accepts(mora: Mora, at: number, found: Phone): boolean {
  if (mora.phones[at] === found) return true;
  return at === 0 && mora.phones.length === 2 && (spellings[mora.kana]?.includes(found) ?? false);
}

const continuesVowel = (mora: Mora | undefined, vowel: Phone) =>
  mora !== undefined && mora.phones.length === 1 && mora.phones[0] === vowel;

function walk(
  labelPhones: readonly LabelPhone[],
  morae: readonly Mora[],
): { moraOf: number[]; difference: PhoneDifference | null } {
  const moraOf: number[] = [];
  let mora = 0;
  let at = 0;
  for (const [index, label] of labelPhones.entries()) {
    const { phone: found, long } = typeof label === "string" ? { phone: label, long: false } : label;
    const current = morae[mora];
    if (!current) return { moraOf, difference: { index, expected: null, found, mora: null } };
    if (!accepts(current, at, found))
      return { moraOf, difference: { index, expected: current.phones[at]!, found, mora } };
    moraOf.push(mora);
    at += 1;
    if (at === current.phones.length) {
      mora += 1;
      at = 0;
    }
    if (!long) continue;
    const next = morae[mora];
    if (!continuesVowel(next, found)) {
      const expected = next?.phones[0] ?? null;
      return { moraOf, difference: { index: index + 1, expected, found, mora: next ? mora : null } };
    }
    mora += 1;
  }
  const rest = morae[mora];
  if (!rest) return { moraOf, difference: null };
  return {
    moraOf,
    difference: { index: labelPhones.length, expected: rest.phones[at]!, found: null, mora },
  };
}

/**
 * Mora index of each label phone (pauses left out) when the labels spell the reading, else null.
 * A label that is long for itself (`a:`) covers two morae and gets the first; labels that write ヂ ヅ with
 * d, or ティ ディ with a glide, count as equal. See `firstDifference` for what is wrong when it is null.
 */
export function matchPhonesToMorae(
  labelPhones: readonly LabelPhone[],
  morae: readonly Mora[],
): number[] | null {
  const { moraOf, difference } = walk(labelPhones, morae);
  return difference === null ? moraOf : null;
}

/** First place where the labels leave the reading, null when they do not; for the message to the user. */
export function firstDifference(
  labelPhones: readonly LabelPhone[],
  morae: readonly Mora[],
): PhoneDifference | null {
  return walk(labelPhones, morae).difference;
}
