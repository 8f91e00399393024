import { expect, test } from "vitest";
import { labelMatch, leastLabelMatch } from "../../../../src/measures/acoustics/labelMatch.ts";
import { analyseVoicing } from "../../../../src/measures/acoustics/voicingFrames.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { makeWords } from "../../../helpers/makeWords.ts";

const parts = [
  { phone: "pause", ms: 200 },
  { phone: "a", ms: 150 },
  { phone: "s", ms: 120 },
  { phone: "o", ms: 200 },
  { phone: "pause", ms: 260 },
  { phone: "e", ms: 160 },
  { phone: "pause", ms: 300 },
] as const;
const spoken = makeWords(parts);
const frames = analyseVoicing(spoken.samples);
const labels = spoken.phones.map((phone) => ({ ...phone, devoiced: false }));
const moved = (ms: number) =>
  labels.map((one) => ({ ...one, startMs: one.startMs + ms, endMs: one.endMs + ms }));
const turned = makeWords([...parts].reverse()).phones.map((phone) => ({ ...phone, devoiced: false }));

test("labelMatch is nearly 1 for a recording's own labels, at any level of the recording", () => {
  expect(labelMatch(frames, labels)).toBeGreaterThan(0.99);
  const soft = analyseVoicing(spoken.samples.map((x) => x / 30));
  expect(labelMatch(soft, labels)).toBeGreaterThan(0.99);
});

test("labelMatch lies below the limit for labels of another recording, and for labels 150 ms late", () => {
  expect(labelMatch(frames, turned)).toBeLessThan(leastLabelMatch);
  expect(labelMatch(frames, moved(150))).toBeLessThan(leastLabelMatch);
});

test("labelMatch forgives labels that lie 30 ms early or late as a whole", () => {
  for (const ms of [-30, 30]) expect(labelMatch(frames, moved(ms))).toBeGreaterThan(leastLabelMatch);
});

test("labelMatch tells nothing of labels without a, e, o or without pauses and voiceless consonants", () => {
  const only = (wanted: string) => labels.filter(({ phone }) => phone === wanted);
  expect(labelMatch(frames, only("pause"))).toBeNull();
  expect(labelMatch(frames, only("a"))).toBeNull();
  expect(labelMatch(frames, [])).toBeNull();
});

test("labelMatch leaves out vowels marked as devoiced and phones shorter than 40 ms", () => {
  const devoiced = labels.map((one) => ({ ...one, devoiced: true }));
  expect(labelMatch(frames, devoiced)).toBeNull();
  const short = labels.map((one) => ({ ...one, endMs: one.startMs + 30 }));
  expect(labelMatch(frames, short)).toBeNull();
});

test("labelMatch tells nothing of silence, or of speech that noise drowns", () => {
  expect(labelMatch(analyseVoicing(new Float32Array(16_000)), labels)).toBeNull();
  const random = seededRandom(4);
  const noise = analyseVoicing(spoken.samples.map((x) => x + 0.5 * random.normal()));
  expect(labelMatch(noise, labels)).toBeNull();
});

test("labelMatch lies within 0 and 1: half where vowels and pauses are equally loud", () => {
  const flat = new Float32Array(200);
  const levels = flat.map((_, t) => (t % 2 === 0 ? -20 : -60));
  const even = { ...frames, frames: 200, lowDb: levels, midDb: levels, highDb: levels };
  const halves = [
    { phone: "a", startMs: 200, endMs: 400, devoiced: false },
    { phone: "pause", startMs: 600, endMs: 800, devoiced: false },
  ] as const;
  expect(labelMatch(even, halves)).toBeCloseTo(0.5, 1);
});
