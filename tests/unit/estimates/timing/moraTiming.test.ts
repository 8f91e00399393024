import { expect, test } from "vitest";
import { moraTiming } from "../../../../src/estimates/timing/moraTiming.ts";
import { stretchesOf } from "../../../../src/estimates/timing/stretches.ts";
import { timedTokens } from "./timedTokens.ts";

const regular = (speaker: string, utterance: string, morae: number, moraMs: number) =>
  timedTokens(speaker, utterance, Array(morae).fill("ka"), Array(morae).fill([moraMs / 2, moraMs / 2]));

test("moraTiming of speech with equal morae finds their duration and explains everything", () => {
  const tokens = [3, 5, 8].flatMap((morae, i) => [
    ...regular("a", `a${i}`, morae, 120),
    ...regular("b", `b${i}`, morae, 160),
  ]);
  const got = moraTiming(tokens, "phrase")!;
  expect(got.msPerMora.estimate).toBeCloseTo(140, 10);
  expect(got.rSquared.estimate).toBeCloseTo(1, 12);
  expect(got.residualMs.estimate).toBeCloseTo(0, 8);
  expect(got).toMatchObject({ unit: "phrase", stretches: 6, speakersLeftOut: 0 });
});

test("moraTiming leaves out speakers without three lengths and is null without any", () => {
  const tokens = [
    ...regular("a", "u1", 4, 100),
    ...regular("a", "u2", 4, 100),
    ...regular("a", "u3", 4, 110),
  ];
  expect(moraTiming(tokens, "phrase")).toBeNull();
  expect(moraTiming([], "word")).toBeNull();
});

test("stretchesOf cuts at pauses, utterances and words", () => {
  const ms = [
    [50, 50],
    [50, 50],
    [50, 70],
  ] as const;
  const tokens = [
    ...timedTokens("a", "u1", ["ka", "ta", "no"], ms, ["かた", "かた", "の"]),
    ...timedTokens("a", "u2", ["ka", "ta", "no"], ms, ["かた", "かた", null]),
  ];
  expect(stretchesOf(tokens, "phrase").map(({ morae, durationMs }) => [morae, durationMs])).toEqual([
    [3, 320],
    [3, 320],
  ]);
  expect(stretchesOf(tokens, "word").map(({ morae, durationMs }) => [morae, durationMs])).toEqual([
    [2, 200],
    [1, 120],
    [2, 200],
  ]);
});

test("stretchesOf counts a long vowel at the end as two morae", () => {
  const tokens = timedTokens(
    "a",
    "u",
    ["ka", "to"],
    [
      [50, 50],
      [50, 150],
    ],
  );
  const long = tokens.map((token, i) => (i === 3 ? { ...token, length: "long" } : token));
  expect(stretchesOf(long, "phrase")[0]!.morae).toBe(3);
});
