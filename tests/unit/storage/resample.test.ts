import { expect, test } from "vitest";
import { resampleTo } from "../../../src/storage/resample.ts";

function toneAt(frequencyHz: number, rateHz: number, length: number): Float32Array {
  return Float32Array.from(
    { length },
    (_, index) => 0.5 * Math.sin((2 * Math.PI * frequencyHz * index) / rateHz),
  );
}

test.each([
  [48000, 48000],
  [44100, 44100],
  [22050, 33333],
  [8000, 12345],
  [24000, 1],
  [48000, 1_500_000],
])(
  "resampleTo from %i Hz keeps a tone in step: same length in time, no delay, whole to the end",
  async (fromHz, length) => {
    const resampled = await resampleTo(toneAt(440, fromHz, length), fromHz);
    expect(resampled).toHaveLength(Math.max(1, Math.round((length * 16000) / fromHz)));
    const expected = toneAt(440, 16000, resampled.length);
    // The ends meet silence and ring within the filter's reach, 20 samples at the lower rate.
    let largest = 0;
    for (let index = 60; index < resampled.length - 60; index++)
      largest = Math.max(largest, Math.abs(resampled[index]! - expected[index]!));
    expect(largest).toBeLessThan(1e-3);
    if (resampled.length > 100) expect(Math.abs(resampled.at(-1)! - expected.at(-1)!)).toBeLessThan(0.2);
  },
);

test("resampleTo takes away what the lower rate cannot hold, at least 80 dB", async () => {
  const resampled = await resampleTo(toneAt(11_000, 48000, 48000), 48000);
  let power = 0;
  for (const value of resampled.subarray(200, 15800)) power += value * value;
  expect(10 * Math.log10(power / 15600 / 0.125)).toBeLessThan(-80);
});

test("resampleTo gives the same bytes whatever it was asked before, and the array itself at equal rates", async () => {
  const samples = toneAt(440, 48000, 9600);
  const first = await resampleTo(samples, 48000);
  await resampleTo(toneAt(1000, 48000, 5000), 48000);
  expect(await resampleTo(samples, 48000)).toEqual(first);
  expect(await resampleTo(samples, 16000)).toBe(samples);
  expect(await resampleTo(new Float32Array(0), 48000)).toHaveLength(0);
});
