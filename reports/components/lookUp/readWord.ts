import { romanReading } from "../../../src/datasets/romanReading.ts";
import type { Sound } from "../../../src/findings/words/sound.ts";
import { type SaidAs, waysToSay } from "../../../src/findings/words/soundsOfKana.ts";

export type ReadWord =
  | { readonly kind: "empty" }
  | { readonly kind: "ways"; readonly text: string; readonly ways: readonly SaidAs[] }
  | { readonly kind: "kanji"; readonly text: string }
  | { readonly kind: "odd"; readonly text: string; readonly odd: string };

const kanji = /\p{Script=Han}/u;
const notKana = /[^\p{Script=Hiragana}\p{Script=Katakana}ー・\s]+/u;

/** What was typed: kana, or romaji that is brought to kana; else why it cannot be read. */
export function readWord(typed: string, isSaid: (sound: Sound) => boolean): ReadWord {
  const text = typed.normalize("NFKC").trim();
  if (text === "") return { kind: "empty" };
  if (kanji.test(text)) return { kind: "kanji", text };
  const kana = /^[a-zāīūēōâîûêô'’-]+$/iu.test(text) ? romanReading(text.replaceAll("’", "'")) : text;
  const ways = kana === null ? [] : waysToSay(kana, isSaid);
  if (kana === null || ways.length === 0) return { kind: "odd", text, odd: notKana.exec(text)?.[0] ?? text };
  return { kind: "ways", text: kana, ways };
}
