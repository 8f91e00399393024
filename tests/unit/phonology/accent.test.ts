import { expect, test } from "vitest";
import { readAccent } from "../../../src/phonology/accent.ts";

test("readAccent(marked) finds the last high mora before each fall and the phrases", () => {
  const { kana, morae, accented, accentPhrase } = readAccent("^ミ[ズヲ#マ[レ]ーシア_シュ]ーニ$");
  expect(kana).toBe("ミズヲマレーシア、シューニ");
  const nuclei = morae.flatMap((mora, at) => (accented[at] ? [`${mora.kana}${at}`] : []));
  expect(nuclei).toEqual(["レ4", "シュ8"]);
  expect(accentPhrase).toEqual([0, 0, 0, 1, 1, 1, 1, 1, 2, 2, 2]);
});

test("readAccent(marked) leaves a phrase without a fall without a nucleus", () => {
  expect(readAccent("^サ[クラガ$").accented).toEqual([false, false, false, false]);
});

test("readAccent(marked) treats ? inside the utterance as an edge and at its end as nothing", () => {
  const { morae, accentPhrase } = readAccent("^カ?_ト?");
  expect(morae.map((mora) => mora.kana)).toEqual(["カ", "ト"]);
  expect(accentPhrase).toEqual([0, 1]);
});

test("readAccent(marked) keeps a fall between two ッ or ー on the mora right before it", () => {
  expect(readAccent("モ]ッテ").accented).toEqual([true, false, false]);
  expect(readAccent("コー]コ").accented).toEqual([false, true, false]);
});
