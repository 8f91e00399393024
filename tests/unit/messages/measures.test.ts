import { expect, test } from "vitest";
import { recordingTooNoisy, wordingsFor } from "../../../src/messages/measures.ts";

const limits = { noisyBelowDb: 22, tooNoisyBelowDb: 12, clippedAbove: 0.001 };
const good = { verdict: "good", voiceAboveBackgroundDb: 40, clippedShare: 0, notFinite: 0 } as const;

test("wordingsFor a good recording says nothing", () => {
  expect(wordingsFor(good, limits)).toEqual([]);
});

test("wordingsFor names every fault once, by rule", () => {
  const faults = wordingsFor(
    { verdict: "too-noisy", voiceAboveBackgroundDb: 7, clippedShare: 0.02, notFinite: 3 },
    limits,
  );
  expect(faults.map(({ rule }) => rule)).toEqual([
    "recording-too-noisy",
    "recording-clipped",
    "samples-not-finite",
  ]);
  expect(wordingsFor({ ...good, verdict: "silent", voiceAboveBackgroundDb: null }, limits)[0]!.rule).toBe(
    "recording-silent",
  );
  expect(
    wordingsFor({ ...good, verdict: "noisy", voiceAboveBackgroundDb: 15 }, limits)[0]!.message,
  ).toContain("15 dB");
});

test("recordingTooNoisy gives the value, the limit and a way out", () => {
  const { message, wayOut } = recordingTooNoisy(7.4, 12);
  expect(message).toContain("7 dB");
  expect(message).toContain("12 dB");
  expect(wayOut.length).toBeGreaterThan(10);
});
