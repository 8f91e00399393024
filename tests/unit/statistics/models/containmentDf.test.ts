import { expect, test } from "vitest";
import { containmentDf } from "../../../../src/statistics/models/containmentDf.ts";
import { groupsOf } from "../../../../src/statistics/models/crossedGroups.ts";
import { designOf, labelled } from "./toyData.ts";

test("containmentDf counts speakers for traits of speakers, words for traits of words, tokens for the rest", () => {
  // 6 speakers × 8 words × 2 tokens.
  const rows = Array.from({ length: 96 }, (_, i) => ({
    speaker: i % 6,
    word: Math.floor(i / 6) % 8,
    token: i,
  }));
  const speaker = labelled(rows.map((row) => `s${row.speaker}`));
  const word = labelled(rows.map((row) => `w${row.word}`));
  const columns = {
    sex: labelled(rows.map((row) => (row.speaker < 3 ? "f" : "m"))),
    vowel: labelled(rows.map((row) => (row.word % 2 === 0 ? "i" : "u"))),
    c1: labelled(rows.map((row) => (row.word < 3 ? "k" : "s"))),
    rate: Float64Array.from(rows, (row) => Math.sin(row.token)),
  };
  const design = designOf(columns, [
    { column: "sex" },
    { column: "vowel" },
    { column: "c1" },
    { column: "rate" },
  ]);
  const groups = [groupsOf("speaker", speaker, design.rows), groupsOf("word", word, design.rows)];
  const df = containmentDf(design.matrix, groups, 96);
  const of = (j: number) => df(Array.from({ length: 5 }, (_, k) => (k === j ? 1 : 0)));
  // Among speakers: 6 − intercept − sex; among words: 8 − intercept − vowel − c1; tokens: 96 − 6 − 8 − rate.
  expect([1, 2, 3, 4].map(of)).toEqual([4, 5, 5, 81]);
  expect(of(0)).toBe(4);
  expect(df([0, 1, 0, 0, 1])).toBe(4);
});
