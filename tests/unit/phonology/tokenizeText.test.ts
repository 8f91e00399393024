import { beforeAll, describe, expect, test } from "vitest";
import type { TextReading } from "../../../src/phonology/reading.ts";
import type { ReadingToken, ReadingTokenizer } from "../../../src/phonology/readingTypes.ts";
import { tokenizeText } from "../../../src/phonology/tokenizeText.ts";
import { loadReader } from "../../../src/storage/loadReader.ts";

const word = (surface_form: string): ReadingToken => ({
  ...{ surface_form, pos: "", pos_detail_1: "", pos_detail_2: "", basic_form: "" },
});
/** Takes any text for one word, and remembers what it was asked. */
function oneWord(): ReadingTokenizer & { readonly asked: string[] } {
  const asked: string[] = [];
  return { asked, entries: () => [], tokenize: (text) => (asked.push(text) > 0 ? [word(text)] : []) };
}

describe("tokenizeText", () => {
  test("leaves a text to the analyser whole where no run is too long for a word", () => {
    const analyser = oneWord();
    const text = `東京は${"ア".repeat(100)}と言った。`;
    expect(tokenizeText(text, analyser)).toEqual([word(text)]);
    expect(analyser.asked).toEqual([text]);
  });

  test.each(["ア", "９", "ｚ", "…"])("keeps a run of %s from it, and loses no letter", (letter) => {
    const analyser = oneWord();
    const run = letter.repeat(101);
    const tokens = tokenizeText(`前${run}後で${run}`, analyser);
    expect(tokens.map(({ surface_form }) => surface_form)).toEqual(["前", run, "後で", run]);
    expect(analyser.asked).toEqual(["前", "後で"]);
  });
});

describe("reading a hostile text", () => {
  let read: (text: string) => TextReading;
  beforeAll(async () => {
    read = await loadReader();
  });

  test.each([
    ...[
      "ア",
      "あ",
      "ー",
      "1",
      "十",
      "a",
      "(",
      "…",
      "、",
      "１万",
      "<a ",
      "東京",
      "・ア",
      "1.",
      "何",
      "龘",
      "\u3099",
    ],
    ...["=", "'", "\\", "😀", "\u202e", "\0", "\ud800", "\udc00", "ゝ", "々", "a\u0301"],
  ])("%j five thousand characters long takes less than five seconds", (part) => {
    const text = part.repeat(Math.floor(5000 / part.length));
    const startedAt = performance.now();
    const { unread, kana } = read(text);
    expect(performance.now() - startedAt).toBeLessThan(5000);
    expect(unread.length > 0 || kana.length > 0 || !/[^ー\P{L}]|\p{N}/u.test(text)).toBe(true);
  });
});
