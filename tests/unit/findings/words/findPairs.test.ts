import { expect, test } from "vitest";
import { findPairs } from "../../../../src/findings/words/findPairs.ts";
import { kanaOfSound, soundOf } from "../../../../src/findings/words/sound.ts";

const pairsOf = (...kana: string[]) => {
  const { pairs, triplets } = findPairs(new Set(kana.map((one) => soundOf(one)!)));
  return {
    pairs: pairs
      .map(({ kind, one, two, mora }) => `${kind} ${kanaOfSound(one)} ${kanaOfSound(two)} ${mora}`)
      .sort(),
    triplets: triplets.map(
      ({ short, geminate, long, mora }) => `${[short, geminate, long].map(kanaOfSound).join(" ")} ${mora}`,
    ),
  };
};

test("findPairs finds length, gemination and the triplet they make", () => {
  expect(pairsOf("サス", "サッス", "サース", "サスー")).toEqual({
    pairs: [
      "gemination サス サッス 1",
      "long-geminate サース サッス 1",
      "vowel-length サス サスー 2",
      "vowel-length サス サース 1",
    ],
    triplets: ["サス サッス サース 1"],
  });
});

test("findPairs finds /i/ against /u/ only where both may be devoiced and the consonant stays", () => {
  expect(pairsOf("シカ", "シュカ", "スカ").pairs).toEqual(["devoiced-vowel シカ シュカ 0"]);
  expect(pairsOf("キカ", "クカ", "キュカ").pairs).toEqual([
    "devoiced-vowel キカ キュカ 0",
    "devoiced-vowel キカ クカ 0",
  ]);
  expect(pairsOf("ヒカ", "ヒュカ", "フカ").pairs).toEqual(["devoiced-vowel ヒカ ヒュカ 0"]);
  expect(pairsOf("シガ", "シュガ", "シーカ", "シューカ", "ビル", "ブル").pairs).toEqual([]);
  expect(pairsOf("アシ", "アシュ").pairs).toEqual(["devoiced-vowel アシ アシュ 1"]);
});

test("findPairs finds the moraic nasal, and gives no pair twice", () => {
  expect(pairsOf("カナ", "カンナ").pairs).toEqual(["moraic-nasal カナ カンナ 1"]);
  expect(pairsOf("アー", "アーー").pairs).toEqual(["vowel-length アー アーー 1"]);
  expect(pairsOf("エンー", "エン").pairs, "a lengthened ン is no long vowel").toEqual([]);
});

test("findPairs of nothing is nothing", () => {
  expect(findPairs(new Set<string>())).toEqual({ pairs: [], triplets: [] });
});
