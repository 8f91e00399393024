import { expect, test } from "vitest";
import { compareUtterance } from "../../../../src/estimates/agreement/compareUtterance.ts";
import { labels, own, utterance } from "./spoken.ts";

test("compareUtterance gives each boundary's time minus the label's, pauses included", () => {
  const mine = own("pause 110", "k 60", "a 100", "pause 80");
  const theirs = labels(false, "pause 100", "k 50", "a 130", "pause 70");
  const { errors, phones, differences } = compareUtterance(utterance(mine, theirs));
  expect(errors.map(({ errorMs }) => errorMs)).toEqual([10, 20, -10]);
  expect(phones).toEqual({ own: 2, reference: 2, same: 2 });
  expect(differences).toEqual([]);
});

test("compareUtterance compares a long vowel with two labels and a geminate with its closure and consonant", () => {
  const mine = own("k 50", "o 200 long", "t 160 geminate", "e 90 short");
  const theirs = labels(false, "k 50", "o 90", "o 90", "cl 70", "t 60", "e 90");
  const { errors, pairs } = compareUtterance(utterance(mine, theirs));
  expect(errors.map(({ errorMs }) => errorMs)).toEqual([0, 20, 30, 50]);
  expect(pairs.map(({ own: { phone }, referenceMs }) => [phone, referenceMs])).toEqual([
    ["k", 50],
    ["o", 180],
    ["t", 130],
    ["e", 90],
  ]);
});

test("compareUtterance leaves a stretch of other sounds out and says where it is", () => {
  const mine = own("k 50", "a 100", "w 40", "a 100", "s 80", "a 100");
  const theirs = labels(false, "k 50", "a 100", "h 40", "a 100", "s 80", "a 100");
  const { errors, differences, phones } = compareUtterance(utterance(mine, theirs));
  expect(errors).toHaveLength(3);
  expect(differences).toEqual([{ utterance: "one", atMs: 150, own: "w", reference: "h" }]);
  expect(phones.same).toBe(5);
});

test("compareUtterance counts pauses that both sides have and that one side has alone", () => {
  const mine = own("a 100", "pause 200", "k 50", "a 100", "s 80", "u 60");
  const theirs = labels(false, "a 100", "pause 210", "k 50", "a 100", "pause 90", "s 80", "u 60");
  expect(compareUtterance(utterance(mine, theirs)).pauses).toEqual({ both: 1, onlyOwn: 0, onlyReference: 1 });
  const bare = labels(false, "a 100", "k 50", "a 100", "s 80", "u 60");
  expect(compareUtterance(utterance(mine, bare)).pauses).toEqual({ both: 0, onlyOwn: 1, onlyReference: 0 });
});

test("compareUtterance takes no duration of two equal vowels that no one can part", () => {
  const mine = own("k 50", "a 100 short", "a 100 short", "k 50");
  const theirs = labels(false, "k 50", "a 90", "a 110", "k 50");
  const { pairs } = compareUtterance(utterance(mine, theirs));
  expect(pairs.map(({ own: { phone } }) => phone)).toEqual(["k", "k"]);
});

test("compareUtterance of an empty side compares nothing and breaks on nothing", () => {
  const { errors, pairs, phones } = compareUtterance(utterance([], labels(true, "k 50", "a 90")));
  expect([errors, pairs]).toEqual([[], []]);
  expect(phones).toEqual({ own: 0, reference: 2, same: 0 });
});
