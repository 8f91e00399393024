import { describe, expect, test } from "vitest";
import { findHum, withoutHum } from "../../../src/signals/withoutHum.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { makeWords } from "../../helpers/makeWords.ts";

const { samples } = makeWords(
  (["pause", "k", "a", "s", "u", "k", "i", "t", "e", "pause", "s", "o", "n", "a", "pause"] as const).map(
    (phone) => ({ phone, ms: phone === "pause" ? 300 : 100 }),
  ),
);
const add = (lines: readonly (readonly [hz: number, amplitude: number])[], to = samples) =>
  to.map((x, i) =>
    lines.reduce((sum, [hz, a]) => sum + a * Math.sin((2 * Math.PI * hz * i) / 16_000 + hz), x),
  );
const power = (x: Float32Array) => x.reduce((sum, value) => sum + value * value, 0);
/** What is left of the lines that were added, dB. */
const leftDb = (dirty: Float32Array) => {
  const clean = withoutHum(dirty, 16_000);
  const left = clean.map((x, i) => x - samples[i]!);
  return 10 * Math.log10(power(left) / power(dirty.map((x, i) => x - samples[i]!)));
};

describe("withoutHum", () => {
  test.each([
    ["50 Hz and its third harmonic", [50, 150]],
    ["60 Hz and its second", [60, 120]],
    ["49.93 Hz with six harmonics", [1, 2, 3, 4, 5, 6].map((h) => 49.93 * h)],
  ])("takes 15 dB and more off %s, loud and faint", (_, hz) => {
    for (const amplitude of [0.1, 0.01]) {
      expect(leftDb(add(hz.map((one, i) => [one, amplitude / (i + 1)] as const)))).toBeLessThan(-15);
    }
  });

  test("gives the very same array back where there is no hum", () => {
    const random = seededRandom(3);
    const noisy = samples.map((x) => x + 0.01 * random.normal());
    for (const x of [
      samples,
      noisy,
      new Float32Array(48_000),
      new Float32Array(0),
      samples.subarray(0, 3000),
    ])
      expect(withoutHum(x, 16_000)).toBe(x);
  });

  test("leaves a steady line alone that is no mains", () => {
    const whistle = add([[237, 0.02]]);
    expect(withoutHum(whistle, 16_000)).toBe(whistle);
  });

  test("does not change its input", () => {
    const dirty = add([[50, 0.1]]);
    const before = dirty.slice();
    expect(withoutHum(dirty, 16_000)).not.toBe(dirty);
    expect(dirty).toEqual(before);
  });
});

test("findHum gives frequency and amplitude of a line (closed form: a·sin(ωt + φ) = a·sin φ·cos ωt + a·cos φ·sin ωt)", () => {
  const random = seededRandom(5);
  const noise = Float32Array.from({ length: 64_000 }, () => 0.001 * random.normal());
  const lines = findHum(add([[50.11, 0.05]], noise), 16_000);
  expect(lines).toHaveLength(1);
  const { hz, cosine, sine } = lines[0]!;
  expect(Math.abs(hz - 50.11)).toBeLessThan(0.005);
  expect(cosine).toBeCloseTo(0.05 * Math.sin(50.11), 2);
  expect(sine).toBeCloseTo(0.05 * Math.cos(50.11), 2);
});
