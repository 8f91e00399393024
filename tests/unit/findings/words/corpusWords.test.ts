import { expect, test } from "vitest";
import { type TokenTable, tokenColumnsNeeded } from "../../../../src/findings/words/corpusTable.ts";
import { corpusWords } from "../../../../src/findings/words/corpusWords.ts";
import { vowelsOf } from "../../../../src/findings/words/environment.ts";
import { kanaOfSound, soundOf } from "../../../../src/findings/words/sound.ts";
import { heardWords, indexHeard, labelledCorpora } from "../../../helpers/wholeTable.ts";

type Row = [phone: string, kind: string, length: string | null, word: string | null, devoiced?: boolean];

function table(
  rows: readonly Row[],
  other: Partial<Record<(typeof tokenColumnsNeeded)[number], unknown>> = {},
): TokenTable {
  const full = rows.map(([phone, kind, length, word, devoiced], index) => ({
    ...{ dataset: "d", labelSet: "l", speaker: "s", utterance: "u", index, phone, kind, length, word },
    ...{
      before: "",
      after: "",
      accented: null,
      devoiceableNeighbour: false,
      startMs: 10 * index,
      endMs: 10 * index + 10,
    },
    ...{ devoiced: devoiced ?? null, devoicedBasis: devoiced === undefined ? null : "annotated", ...other },
  }));
  return Object.fromEntries(
    tokenColumnsNeeded.map((name) => [name, full.map((row) => row[name])]),
  ) as unknown as TokenTable;
}

const kitte: Row[] = [
  ["k", "consonant", "single", "切手"],
  ["i", "vowel", "short", "切手", true],
  ["t", "consonant", "geminate", "切手"],
  ["e", "vowel", "short", "切手", false],
];
const kooen: Row[] = [
  ["k", "consonant", "single", "公園"],
  ["o", "vowel", "long", "公園", false],
  ["e", "vowel", "short", "公園", false],
  ["N", "consonant", null, "公園"],
];

test("heardWords puts sounds together from phones: geminates, long vowels, ン, and what was devoiced", () => {
  const rows = table([...kitte, ["o", "vowel", "short", null, false], ...kooen]);
  const heard = heardWords(rows, labelledCorpora(rows)[0]!);
  expect(
    heard.map(({ surface, sound, startMs, endMs }) => [surface, kanaOfSound(sound), startMs, endMs]),
  ).toEqual([
    ["切手", "キッテ", 0, 40],
    ["公園", "コーエン", 50, 90],
  ]);
  expect([...heard[0]!.devoiced]).toEqual([
    [0, true],
    [2, false],
  ]);
  expect(corpusWords(indexHeard([...heard, ...heard]))).toHaveLength(2);
});

test("heardWords keeps no devoicing that a rule predicted", () => {
  const rows = table(kitte, { devoicedBasis: "predicted" });
  expect(heardWords(rows, labelledCorpora(rows)[0]!)[0]!.devoiced.size).toBe(0);
});

test("labelledCorpora takes one labelling a dataset: that with evidence", () => {
  const plain = table([...kooen, ...kooen], { labelSet: "a", devoicedBasis: "predicted" });
  const marked = table(kitte, { labelSet: "b" });
  const both = Object.fromEntries(
    tokenColumnsNeeded.map((name) => [name, [...(plain[name] as unknown[]), ...(marked[name] as unknown[])]]),
  ) as unknown as TokenTable;
  expect(
    labelledCorpora(both).map(({ labelSet, evidence, predicted }) => [labelSet, evidence, predicted]),
  ).toEqual([["b", 2, 0]]);
  expect(labelledCorpora(plain)[0]).toMatchObject({ evidence: 0, predicted: 4 });
});

test("vowelsOf tells C1, C2, accent and neighbours of a word said alone", () => {
  const [ki, ku] = vowelsOf(soundOf("キク")!, 2);
  expect(ki).toMatchObject({
    vowel: "i",
    before: "k",
    after: "k",
    accented: false,
    position: "initial",
    devoiceable: true,
    neighbour: true,
  });
  expect(ku).toMatchObject({
    vowel: "u",
    before: "k",
    after: "pause",
    accented: true,
    position: "final",
    devoiceable: true,
  });
  const kitteVowels = vowelsOf(soundOf("キッテ")!, null);
  expect(
    kitteVowels.map(({ mora, after, accented, devoiceable }) => [mora, after, accented, devoiceable]),
  ).toEqual([
    [0, "cl", null, true],
    [2, "pause", null, false],
  ]);
  const [koo, e] = vowelsOf(soundOf("コーエン")!, 0);
  expect(koo).toMatchObject({ long: true, after: "e", devoiceable: false });
  expect(e).toMatchObject({ before: "o", after: "N" });
  expect(vowelsOf(soundOf("シーツ")!, 1)[0]).toMatchObject({
    long: true,
    devoiceable: false,
    accented: true,
  });
  expect(vowelsOf(soundOf("シキ")!, 0).every(({ neighbour }) => neighbour)).toBe(true);
  expect(vowelsOf(soundOf("ンー")!, 0)).toEqual([]);
});
