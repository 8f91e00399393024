import { expect, test } from "vitest";
import { applyLexicon, makeLexicon } from "../../../src/phonology/applyLexicon.ts";
import { pieces, readingsOf } from "./pieces.ts";

const entry = (surface: string, reading: string, accent: string | null = null) => ({
  surface,
  reading,
  accent,
});
const lexicon = makeLexicon(
  [
    [entry("東", "ヒガシ"), entry("東京", "トーキョー")],
    [entry("東", "あずま", "1"), entry("京都", "キョート")],
  ],
  (surface) => surface,
);

test("applyLexicon(words) takes the longest entry that words make together", () => {
  expect(readingsOf(applyLexicon(pieces("東:トー 京:キョー へ:エ"), lexicon))).toBe("トーキョー エ");
});

test("applyLexicon(words) leaves an entry alone that begins or ends inside a word", () => {
  expect(readingsOf(applyLexicon(pieces("東京都:トーキョート"), lexicon))).toBe("トーキョート");
});

test("makeLexicon(lists) lets later lists win and turns readings to katakana, accent kept", () => {
  const [word] = applyLexicon(pieces("東:トー"), lexicon);
  expect(word).toMatchObject({ readings: ["アズマ"], accent: "1" });
});

test("applyLexicon(words) gives a reading to words that had none, and their place", () => {
  const [word] = applyLexicon(pieces("京: 都:ト"), lexicon);
  expect(word).toMatchObject({ readings: ["キョート"], start: 0, end: 2 });
});
