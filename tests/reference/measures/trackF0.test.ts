import { PitchDetector } from "pitchy";
import { describe, expect, test } from "vitest";
import { trackF0 } from "../../../src/signals/trackF0.ts";

const options = { sampleRateHz: 16_000, hopMs: 5, minHz: 60, maxHz: 600 };
const harmonic = (f0Hz: number, harmonics: number, seconds = 0.5) =>
  Float32Array.from({ length: 16_000 * seconds }, (_, i) => {
    let sum = 0;
    for (let k = 1; k <= harmonics; k++) sum += Math.sin((2 * Math.PI * k * f0Hz * i) / 16_000) / k;
    return 0.3 * sum;
  });
/** Frames that do not touch the signal's ends. */
const inner = (values: Float32Array) => [...values.subarray(8, values.length - 8)];

describe("trackF0", () => {
  for (const hz of [70, 82.4, 100, 146.8, 220, 330, 440, 500]) {
    test(`finds ${hz} Hz within 0.5 % in a pure tone and in eight harmonics, in every frame`, () => {
      for (const harmonics of [1, 8]) {
        for (const found of inner(trackF0(harmonic(hz, harmonics), options).f0Hz)) {
          expect(Math.abs(found / hz - 1)).toBeLessThan(0.005);
        }
      }
    });
  }

  test("follows a chirp from 100 to 300 Hz in 2 s within 1 % of its known frequency", () => {
    const n = 32_000;
    let phase = 0;
    const chirp = Float32Array.from({ length: n }, (_, i) => {
      phase += (2 * Math.PI * 100 * 3 ** (i / n)) / 16_000;
      return 0.3 * (Math.sin(phase) + 0.5 * Math.sin(2 * phase) + 0.3 * Math.sin(3 * phase));
    });
    const { f0Hz } = trackF0(chirp, options);
    for (let t = 8; t < f0Hz.length - 8; t++) {
      expect(Math.abs(f0Hz[t]! / (100 * 3 ** (((t + 0.5) * 80) / n)) - 1)).toBeLessThan(0.01);
    }
  });

  test("agrees with pitchy, an independent detector, within 0.5 % on harmonic tones", () => {
    const detector = PitchDetector.forFloat32Array(1024);
    for (const hz of [110, 180, 270]) {
      const samples = harmonic(hz, 6);
      const [theirs] = detector.findPitch(samples.subarray(3000, 4024), 16_000);
      const ours = trackF0(samples, options).f0Hz[Math.round(3512 / 80)]!;
      expect(Math.abs(ours / theirs - 1)).toBeLessThan(0.005);
    }
  });

  test("gives periodicity near 1 for a tone, below .6 for most of white noise, 0 for silence", () => {
    expect(Math.min(...inner(trackF0(harmonic(120, 8), options).periodicity))).toBeGreaterThan(0.98);
    let seed = 1;
    const noise = Float32Array.from({ length: 16_000 }, () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) | 0;
      return seed / 2 ** 33;
    });
    const noisy = inner(trackF0(noise, options).periodicity);
    expect(noisy.filter((r) => r > 0.6).length / noisy.length).toBeLessThan(0.15);
    expect(Math.max(...trackF0(new Float32Array(8000), options).periodicity)).toBe(0);
  });

  test("is not moved by direct current or by rumble of 25 Hz at the voice's own level", () => {
    const shaken = harmonic(150, 5).map((x, i) => x + 0.2 + 0.3 * Math.sin((2 * Math.PI * 25 * i) / 16_000));
    const { f0Hz } = trackF0(shaken, options);
    for (const hz of inner(f0Hz)) expect(Math.abs(hz / 150 - 1)).toBeLessThan(0.01);
  });
});
