import { expect, test } from "vitest";
import { decimate } from "../../../src/signals/decimate.ts";

const tone = (hz: number) =>
  Float32Array.from({ length: 16000 }, (_, i) => Math.sin((2 * Math.PI * hz * i) / 16000));
const rms = (x: Float32Array) => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);

test("decimate(x, 4) keeps a 500 Hz tone at its place and height", () => {
  const out = decimate(tone(500), 4);
  expect(out.length).toBe(4000);
  for (let i = 100; i < 3900; i++) expect(out[i]).toBeCloseTo(Math.sin((2 * Math.PI * 500 * i) / 4000), 2);
});

test("decimate(x, 4) takes away at least 50 dB of what would fold over", () => {
  const inner = (hz: number) => rms(decimate(tone(hz), 4).subarray(100, 3900));
  for (const hz of [2600, 3500, 5000, 7000])
    expect(20 * Math.log10(inner(hz) / inner(500))).toBeLessThan(-50);
});

test("decimate(x, 1) is x itself", () => {
  const x = tone(100);
  expect(decimate(x, 1)).toBe(x);
});
