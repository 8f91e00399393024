import { describe, expect, test } from "vitest";
import { column, extractFeatures, staticDims } from "../../../src/alignment/features.ts";

const at = (values: Float32Array, frame: number, place: number) => values[frame * staticDims + place]!;

describe("extractFeatures", () => {
  test("makes a frame every 10 ms that stands for the 10 ms around its window's middle", () => {
    const samples = new Float32Array(16000);
    // One loud click in the middle of frame 50.
    samples[50 * 160 + 80] = 1;
    const { frames, values, durationMs } = extractFeatures(samples);
    expect(frames).toBe(100);
    expect(durationMs).toBe(1000);
    let loudest = 0;
    for (let t = 0; t < frames; t++)
      if (at(values, t, column.energy) > at(values, loudest, column.energy)) loudest = t;
    expect(loudest).toBe(50);
    expect(at(values, 49, column.energy)).toBeCloseTo(at(values, 51, column.energy), 1);
  });
  test("tells a buzz from a hiss by periodicity and by high against low band", () => {
    let state = 1;
    const samples = Float32Array.from({ length: 16000 }, (_, i) => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const noise = state / 2 ** 31 - 1;
      return i < 8000 ? 0.3 * Math.sign(Math.sin((2 * Math.PI * 150 * i) / 16000)) : 0.2 * noise;
    });
    const { values } = extractFeatures(samples);
    const tilt = (t: number) => at(values, t, column.high) - at(values, t, column.low);
    expect(at(values, 25, column.periodicity)).toBeGreaterThan(0.95);
    expect(at(values, 75, column.periodicity)).toBeLessThan(0.7);
    expect(tilt(75)).toBeGreaterThan(tilt(25) + 2);
  });
  test("differ between recordings of unequal loudness by energy alone", () => {
    const one = Float32Array.from({ length: 8000 }, (_, i) => 0.5 * Math.sin(i * i * 1e-4));
    const loud = extractFeatures(one).values;
    const soft = extractFeatures(one.map((x) => x / 8)).values;
    for (let t = 0; t < 50; t++) {
      for (let k = 0; k < 12; k++) expect(at(soft, t, k)).toBeCloseTo(at(loud, t, k), 1);
      expect(at(loud, t, column.energy) - at(soft, t, column.energy)).toBeCloseTo(2 * Math.log(8), 1);
    }
  });
  test("of silence, of nothing and of a single sample are finite", () => {
    for (const length of [0, 1, 1600]) {
      const { frames, values } = extractFeatures(new Float32Array(length));
      expect(frames).toBe(Math.max(1, Math.ceil(length / 160)));
      expect(values.every(Number.isFinite)).toBe(true);
    }
  });
});
