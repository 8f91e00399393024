import { expect, test } from "vitest";
import { normaliseDurations } from "../../../src/estimates/normaliseDurations.ts";

const token = (
  index: number,
  word: string | null,
  startMs: number,
  endMs: number,
  rate: number | null = 8,
) => ({
  ...{ utterance: "u", labelSet: "l", index, word, startMs, endMs },
  durationMs: endMs - startMs,
  speechRateMoraePerSec: rate,
});

test("normaliseDurations by mora divides by the mean mora of the stretch", () => {
  // 8 morae a second: a mora of 125 ms.
  const [short, long] = normaliseDurations([token(0, null, 0, 50), token(1, null, 50, 300)], "mora");
  expect(short!.durationMs).toBeCloseTo(400, 10);
  expect(long!.durationMs).toBeCloseTo(2000, 10);
  expect(normaliseDurations([token(0, null, 0, 50, null)], "mora")).toEqual([]);
});

test("normaliseDurations by mora does not change when everything is said twice as fast", () => {
  const slow = normaliseDurations([token(0, null, 0, 50, 8)], "mora");
  const fast = normaliseDurations([token(0, null, 0, 25, 16)], "mora");
  expect(fast[0]!.durationMs).toBeCloseTo(slow[0]!.durationMs, 10);
});

test("normaliseDurations by word divides by the word from first to last sound, and leaves out what has no word", () => {
  const tokens = [
    token(0, "ビル", 0, 60),
    token(1, "ビル", 60, 200),
    token(2, null, 200, 250),
    token(3, "ビル", 250, 350),
  ];
  const got = normaliseDurations(tokens, "word");
  expect(got.map((t) => t.index)).toEqual([0, 1, 3]);
  expect(got.map((t) => t.durationMs)).toEqual([300, 700, 1000]);
});
