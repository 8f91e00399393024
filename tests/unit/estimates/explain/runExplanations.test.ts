import { expect, test } from "vitest";
import { runExplanations } from "../../../../src/estimates/explain/runExplanations.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { inventVowels, notFinite } from "./inventVowels.ts";

const vowels = inventVowels({ seed: 6, speakers: 12, words: 40, tokens: 900 });

test("runExplanations answers every question, ready for JSON, at the level asked for", () => {
  const got = runExplanations(tokenTableOfRows(vowels), 0.9, ["d"]);
  const { devoicing, duration, vowelSpace, colouring, decisionError, timing } = got;
  expect(
    [devoicing, duration, vowelSpace, colouring, decisionError, timing].map((list) => list.length),
  ).toEqual([1, 1, 1, 4, 2, 1]);
  for (const list of [devoicing, duration, vowelSpace, colouring, decisionError, timing])
    for (const one of list) expect(one.level).toBe(0.9);
  expect(decisionError[0]!.synthetic).toBe(true);
  expect(notFinite(got)).toEqual([]);
  expect(JSON.parse(JSON.stringify(got))).toEqual(got);
});

test("runExplanations of no tokens has no answers, and the same tokens give the same bytes", () => {
  const empty = runExplanations(tokenTableOfRows([]), 0.95);
  expect(Object.values(empty).every((list) => list.length === 0)).toBe(true);
  const bytes = () => JSON.stringify(runExplanations(tokenTableOfRows(vowels.slice(0, 400)), 0.95));
  expect(bytes()).toBe(bytes());
});
