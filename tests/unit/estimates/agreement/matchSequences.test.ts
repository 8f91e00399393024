import { expect, test } from "vitest";
import { matchSequences } from "../../../../src/estimates/agreement/matchSequences.ts";

const letters = (word: string) => [...word];

test("matchSequences of equal sequences is one run without a difference", () => {
  expect(matchSequences(letters("kasa"), letters("kasa"))).toEqual({
    runs: [{ own: 0, reference: 0, length: 4 }],
    differences: [],
  });
});

test("matchSequences names what one side lacks, has more, or has otherwise", () => {
  const { runs, differences } = matchSequences(letters("wakasmi"), letters("hakasumi"));
  expect(runs).toEqual([
    { own: 1, reference: 1, length: 4 },
    { own: 5, reference: 6, length: 2 },
  ]);
  expect(differences).toEqual([
    { ownFrom: 0, ownTo: 1, referenceFrom: 0, referenceTo: 1 },
    { ownFrom: 5, ownTo: 5, referenceFrom: 5, referenceTo: 6 },
  ]);
});

test("matchSequences finds the longest common subsequence of a known pair", () => {
  // ABCBDAB and BDCABA have longest common subsequences of length 4, as a table drawn by hand shows.
  const { runs } = matchSequences(letters("ABCBDAB"), letters("BDCABA"));
  expect(runs.reduce((sum, { length }) => sum + length, 0)).toBe(4);
});

test("matchSequences of an empty sequence is a difference alone, of two empty ones nothing", () => {
  expect(matchSequences([], letters("ab"))).toEqual({
    runs: [],
    differences: [{ ownFrom: 0, ownTo: 0, referenceFrom: 0, referenceTo: 2 }],
  });
  expect(matchSequences([], [])).toEqual({ runs: [], differences: [] });
});

test("matchSequences of sequences too long to compare keeps equal starts and ends and stays small", () => {
  const own = ["a", ...new Array<string>(9000).fill("x"), "b"];
  const reference = ["a", ...new Array<string>(9000).fill("y"), "b"];
  const { runs, differences } = matchSequences(own, reference);
  expect(runs).toEqual([
    { own: 0, reference: 0, length: 1 },
    { own: 9001, reference: 9001, length: 1 },
  ]);
  expect(differences).toHaveLength(1);
});
