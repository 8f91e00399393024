import { UserError } from "../../../src/messages/userError.ts";
import type { LabelPhone } from "./label.ts";
import { readingDiffers } from "./messages.ts";

/** A mora with its katakana and the phones it is spoken with. */
export interface Mora {
  readonly kana: string;
  /** Indices of its phones in the labels. */
  readonly phones: number[];
  readonly phrase: string;
  readonly nucleus: number;
}

/** Splits katakana into morae: `キョー` into `キョ`, `ー`. */
export function splitMorae(kana: string): string[] {
  return kana.match(/[ァ-ヴー][ァィゥェォャュョヮ]?/g) ?? [];
}

/**
 * Pairs the morae of the reading with those of the labels; null stands for a pause within the sentence.
 * Throws UserError when their numbers differ, so no reading can drift away from its labels.
 */
export function alignMorae(words: readonly string[], phones: readonly LabelPhone[]): (Mora | null)[] {
  const kana = splitMorae(words.join(""));
  const morae: (Mora | null)[] = [];
  let next = 0;
  for (const [index, { phone, mora, phrase, nucleus }] of phones.entries()) {
    if (phone === "pau") morae.push(null);
    if (mora === null || phrase === null) continue;
    const open = morae.at(-1);
    if (open && phones[index - 1]?.mora === mora) open.phones.push(index);
    else morae.push({ kana: kana[next++] ?? "", phones: [index], phrase, nucleus });
  }
  if (next !== kana.length) throw new UserError(readingDiffers(kana, next, words));
  return morae;
}

/** Katakana as pronounced, `、` where the sentence pauses. */
export function formatReading(morae: readonly (Mora | null)[]): string {
  return morae.map((mora) => mora?.kana ?? "、").join("");
}

/** The reading with `[` where pitch rises, `]` where it falls, `#` between accent phrases and `_` at a pause. */
export function formatAccentReading(morae: readonly (Mora | null)[]): string {
  let text = "";
  let position = 0;
  for (const [index, mora] of morae.entries()) {
    const [before, after] = [morae[index - 1], morae[index + 1]];
    if (mora === null) {
      text += "_";
      continue;
    }
    const first = before?.phrase !== mora.phrase;
    const last = after?.phrase !== mora.phrase;
    position = first ? 1 : position + 1;
    if (first && before) text += "#";
    text += mora.kana;
    if (last) continue;
    if (position === mora.nucleus) text += "]";
    else if (position === 1) text += "[";
  }
  return text;
}
