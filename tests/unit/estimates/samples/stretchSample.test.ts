import { expect, test } from "vitest";
import { stretchSample } from "../../../../src/estimates/samples/stretchSample.ts";
import { timedTokens } from "../timing/timedTokens.ts";

const tokens = [
  ...timedTokens(
    "a",
    "u1",
    ["ka", "ki", "ku"],
    [
      [40, 60],
      [40, 60],
      [40, 60],
    ],
    ["x", "x", "y"],
  ),
  ...timedTokens(
    "b",
    "u2",
    ["ka", "ki"],
    [
      [100, 100],
      [100, 100],
    ],
    ["z", "z"],
  ),
];

test("stretchSample of words has a bin a number of morae, with quantiles between order statistics", () => {
  const { bins } = stretchSample(tokens, "word", 1);
  expect(bins).toEqual([
    { morae: 1, stretches: 1, speakers: 1, quantilesMs: [100, 100, 100, 100, 100] },
    { morae: 2, stretches: 2, speakers: 2, quantilesMs: [220, 250, 300, 350, 380] },
  ]);
});

test("stretchSample of stretches cuts at pauses only, and its points are some of them", () => {
  const { bins, points } = stretchSample(tokens, "phrase", 1);
  expect(bins.map(({ morae, stretches }) => [morae, stretches])).toEqual([
    [2, 1],
    [3, 1],
  ]);
  expect(points).toEqual({ morae: [3, 2], ms: [300, 400] });
});

test("stretchSample keeps at most 500 points of however many", () => {
  const many = Array.from({ length: 800 }, (_, k) =>
    timedTokens("a", `u${k}`, ["ka"], [[40, 60]], ["w"]),
  ).flat();
  const { bins, points } = stretchSample(many, "word", 1);
  expect(bins[0]!.stretches).toBe(800);
  expect(points.ms.length).toBe(500);
});

test("stretchSample of nothing is empty", () => {
  expect(stretchSample([], "word", 1)).toEqual({ unit: "word", bins: [], points: { morae: [], ms: [] } });
});
