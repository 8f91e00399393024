import { expect, test } from "vitest";
import { loadTokenizer } from "../../../src/storage/loadTokenizer.ts";

test("loadTokenizer() finds the installed dictionary; words join to the text and entries lists every reading", async () => {
  const tokenizer = await loadTokenizer();
  const text = "今日は、良い天気です。ＡＢＣも";
  expect(
    tokenizer
      .tokenize(text)
      .map((token) => token.surface_form)
      .join(""),
  ).toBe(text);
  const readings = tokenizer.entries("今日").map((entry) => entry.reading);
  expect(readings).toEqual(expect.arrayContaining(["キョウ", "コンニチ"]));
  expect(tokenizer.entries("今日は良い")).toEqual([]);
  expect(tokenizer.entries("")).toEqual([]);
});
