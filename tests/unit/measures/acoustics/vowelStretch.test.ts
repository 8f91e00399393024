import { expect, test } from "vitest";
import { isIsland, islandOfVoicing } from "../../../../src/measures/acoustics/islandOfVoicing.ts";
import type { MeasuredPhone } from "../../../../src/measures/acoustics/measuredPhone.ts";
import type { VoicingFrames } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { ownFrames, vowelStretch } from "../../../../src/measures/acoustics/vowelStretch.ts";

const frames: VoicingFrames = {
  frames: 100,
  periodicity: new Float32Array(100),
  f0Hz: new Float32Array(100),
  steadiness: new Float32Array(100),
  lowDb: new Float32Array(100),
  midDb: new Float32Array(100),
  highDb: new Float32Array(100),
};
const phone = (name: string, startMs: number, endMs: number) =>
  ({ phone: name, startMs, endMs, closureEndMs: null }) as MeasuredPhone;
/** a 0–100, s 100–200, u 200–250, k 250–350, a 350–500; frames of 5 ms. */
const phones = [
  phone("a", 0, 100),
  phone("s", 100, 200),
  phone("u", 200, 250),
  phone("k", 250, 350),
  phone("a", 350, 500),
];
const stretch = vowelStretch(frames, phones, 2);
const mask = (...runs: [number, number][]) => {
  const out = new Uint8Array(100);
  for (const [from, to] of runs) out.fill(1, from / 5, to / 5);
  return out;
};

test("vowelStretch runs from the start of a fricative C1 to 40 ms into C2", () => {
  expect([stretch.from, stretch.to, stretch.vowelFrom, stretch.vowelTo]).toEqual([20, 58, 40, 50]);
});

test("vowelStretch of a vowel among voiced sounds is its own interval", () => {
  const { from, to } = vowelStretch(
    frames,
    [phone("n", 0, 100), phone("i", 100, 180), phone("m", 180, 260)],
    1,
  );
  expect([from, to]).toEqual([20, 36]);
});

test("vowelStretch reaches 60 ms into a pause, and stays inside the recording", () => {
  expect(
    vowelStretch(frames, [phone("s", 0, 100), phone("u", 100, 140), phone("pause", 140, 400)], 1).to,
  ).toBe(40);
  expect(vowelStretch(frames, [phone("s", 300, 400), phone("u", 400, 490)], 1).to).toBe(100);
});

test("islandOfVoicing counts voice in the vowel, and voice that the labels gave to C1", () => {
  expect(islandOfVoicing(stretch, mask([205, 245]))).toBe(40);
  expect(islandOfVoicing(stretch, mask([150, 180]))).toBe(30);
});

test("islandOfVoicing leaves out the vowel before as it fades, but not voice that runs on into the vowel", () => {
  expect(islandOfVoicing(stretch, mask([0, 140]))).toBe(0);
  expect(islandOfVoicing(stretch, mask([0, 230]))).toBe(30);
});

test("islandOfVoicing leaves out the onset after C2 and a hum that starts late in the closure", () => {
  expect(islandOfVoicing(stretch, mask([270, 500]))).toBe(0);
  expect(islandOfVoicing(stretch, mask([270, 290]))).toBe(0);
});

test("islandOfVoicing bridges one frame, not two", () => {
  expect(islandOfVoicing(stretch, mask([205, 215], [220, 230]))).toBe(25);
  expect(islandOfVoicing(stretch, mask([205, 215], [225, 235]))).toBe(10);
});

test("isIsland asks for 20 ms, or all but a frame of a shorter stretch", () => {
  expect([isIsland(20, 100), isIsland(15, 100), isIsland(10, 15), isIsland(5, 15)]).toEqual([
    true,
    false,
    true,
    false,
  ]);
});

test("ownFrames is empty rather than backwards when all of it is the neighbours'", () => {
  const { from, to } = ownFrames(stretch, () => true);
  expect(to - from).toBe(stretch.vowelTo - stretch.vowelFrom);
});
