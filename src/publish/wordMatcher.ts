import { romanReading } from "../datasets/romanReading.ts";
import { kanaToMorae, type Mora } from "../phonology/kana.ts";

/** Where a wanted word stands in a reading: first mora, and one past the last. */
export type MoraRange = readonly [from: number, to: number];

/** What is looked for: sounds, when it was written in kana or Latin letters, and else the text as it is. */
export interface WantedWord {
  readonly text: string;
  readonly morae: readonly Mora[] | null;
}

/** A word as a reader types it: kana of either kind, Hepburn or other Latin letters, or with kanji. Null for nothing. */
export function wantedWord(typed: string): WantedWord | null {
  const text = typed.normalize("NFKC").trim();
  if (text === "") return null;
  const latin = /^[\p{Script=Latin}' :-]+$/u.test(text);
  const kana = latin ? romanReading(text.toLowerCase().replaceAll(" ", "")) : text;
  if (kana === null) return { text, morae: null };
  const { morae, unknown } = kanaToMorae(kana);
  return { text, morae: unknown.length > 0 || morae.length === 0 ? null : morae };
}

/** Every place of a reading that sounds like what is wanted; オウ and エイ pass for オー and エー. */
export function placesOf(wanted: readonly Mora[], reading: readonly Mora[]): MoraRange[] {
  const found: MoraRange[] = [];
  for (let from = 0; from + wanted.length <= reading.length; from++)
    if (wanted.every((mora, i) => sameSound(mora, reading[from + i]!, reading[from + i - 1])))
      found.push([from, from + wanted.length]);
  return found;
}

const lengthening: Readonly<Record<string, string>> = { o: "u", e: "i" };

function sameSound(wanted: Mora, spoken: Mora, before: Mora | undefined): boolean {
  if (wanted.phones.join() === spoken.phones.join()) return true;
  return (
    spoken.kind === "long" &&
    wanted.phones.length === 1 &&
    before?.vowel != null &&
    wanted.phones[0] === lengthening[before.vowel]
  );
}
