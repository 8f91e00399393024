import { expect, test } from "vitest";
import { answerRatios } from "../../../../src/findings/sentences/answers.ts";
import { voicedSentence } from "../../../../src/findings/sentences/voicedRatios.ts";
import { ratioRow } from "../rows.ts";

const spaces = (text: string) => text.replaceAll("\u00a0", " ");
const { short } = ratioRow();
const voiced = {
  ...{ estimate: 2.56, low: 2.31, high: 2.84, speakers: 12 },
  ...{ longTokens: 50, shortTokens: 30, devoicedShort: 20 },
};
const i = ratioRow({ by: { phone: "i" }, short: { ...short, devoiced: 20 }, voiced });
const a = ratioRow();

test("voicedSentence gives the ratio against voiced vowels of the sounds with many devoiced ones", () => {
  expect(spaces(voicedSentence([a, i]))).toMatch(
    /^Here 40 % of the short .*i.* are whispered, .*; against voiced ones alone it is 2\.56 times \(.*i.*; 95 % interval 2\.31 to 2\.84\)\.$/,
  );
  expect(spaces(answerRatios([a, i]))).toContain(spaces(voicedSentence([i])));
});

test("voicedSentence says that devoiced vowels are counted where only cells are at hand", () => {
  expect(spaces(voicedSentence([a, { ...i, voiced: null }]))).toMatch(
    /^Here 40 % .* they are counted too\.$/,
  );
});

test("voicedSentence says nothing where hardly any vowel is devoiced, or nothing tells", () => {
  expect(voicedSentence([a])).toBe("");
  expect(voicedSentence([{ ...i, short: { ...short, devoiced: 2 } }])).toBe("");
  expect(voicedSentence([{ ...i, short: { ...short, devoiced: null } }])).toBe("");
  expect(voicedSentence([])).toBe("");
});
