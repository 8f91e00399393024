import { PitchDetector } from "pitchy";
import { describe, expect, test } from "vitest";
import { createPeriodicityMeter } from "../../../src/signals/periodicity.ts";

const rate = 16000;
const meter = createPeriodicityMeter({ sampleRateHz: rate, windowMs: 40, minHz: 60, maxHz: 400 });
const cents = (hz: number, reference: number) => Math.abs(1200 * Math.log2(hz / reference));

function make(samples: number, phase: (t: number) => number): Float32Array {
  return Float32Array.from({ length: samples }, (_, i) => 0.5 * Math.sin(phase(i / rate)));
}
/** Pulses filtered into a vowel-like spectrum: harmonics falling by 6 dB an octave. */
function voice(hz: number): Float32Array {
  return Float32Array.from({ length: 4000 }, (_, i) => {
    let sum = 0;
    for (let h = 1; h * hz < 4000; h++) sum += Math.sin((2 * Math.PI * h * hz * i) / rate + h) / h;
    return 0.2 * sum;
  });
}
/** Uniform noise from a fixed linear congruential generator (Numerical Recipes' constants). */
function noise(samples: number, seed: number): Float32Array {
  let state = seed;
  return Float32Array.from({ length: samples }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 31 - 1;
  });
}

describe("createPeriodicityMeter().measure", () => {
  test.each([75, 110, 147.3, 220, 311.1, 390])(
    "a pure tone of %d Hz: strength above .99, within 3 cents",
    (hz) => {
      const { strength, hz: found } = meter.measure(
        make(4000, (t) => 2 * Math.PI * hz * t),
        1000,
      );
      expect(strength).toBeGreaterThan(0.99);
      expect(cents(found, hz)).toBeLessThan(3);
    },
  );

  test("a chirp from 100 to 300 Hz in 1 s: within 40 cents of its frequency at the frame's centre", () => {
    const chirp = make(rate, (t) => 2 * Math.PI * (100 * t + 100 * t * t));
    for (let start = 800; start < rate - 1440; start += 160) {
      const expected = 100 + (200 * (start + 320)) / rate;
      expect(cents(meter.measure(chirp, start).hz, expected)).toBeLessThan(40);
    }
  });

  test("white noise stays below .6 in 200 of 200 frames and below .4 in the median", () => {
    const x = noise(200 * 640, 1);
    const strengths = Array.from({ length: 200 }, (_, k) => meter.measure(x, k * 640).strength).sort(
      (a, b) => a - b,
    );
    expect(strengths[199]).toBeLessThan(0.6);
    expect(strengths[100]).toBeLessThan(0.4);
  });

  test("strength falls with noise as signal / (signal + noise): .5 at 0 dB, .909 at 10 dB", () => {
    const clean = make(64000, (t) => 2 * Math.PI * 200 * t);
    const rough = noise(64000, 5);
    for (const [db, expected] of [
      [0, 0.5],
      [10, 10 / 11],
    ] as const) {
      // A sine of height .5 has power .125, the noise 1/3.
      const gain = Math.sqrt((0.125 / 10 ** (db / 10)) * 3);
      const mixed = clean.map((v, i) => v + gain * rough[i]!);
      let sum = 0;
      for (let k = 0; k < 90; k++) sum += meter.measure(mixed, k * 640).strength;
      expect(Math.abs(sum / 90 - expected)).toBeLessThan(0.06);
    }
  });

  test("silence, a constant and frames beyond the recording have strength 0 and no frequency", () => {
    expect({ ...meter.measure(new Float32Array(1000), 0) }).toEqual({ strength: 0, hz: 0 });
    expect({ ...meter.measure(new Float32Array(1000).fill(0.7), 100) }).toEqual({ strength: 0, hz: 0 });
    expect({ ...meter.measure(voice(120), 90000) }).toEqual({ strength: 0, hz: 0 });
  });

  /** A second opinion: pitchy 4 (MIT), the McLeod pitch method, on the same frames. */
  test.each([90, 123.4, 180, 251])("a voice-like sound of %d Hz: within 5 cents of pitchy", (hz) => {
    const x = voice(hz);
    const [theirs, clarity] = PitchDetector.forFloat32Array(1024).findPitch(x.subarray(1000, 2024), rate);
    expect(clarity).toBeGreaterThan(0.95);
    expect(cents(meter.measure(x, 1192).hz, theirs)).toBeLessThan(5);
  });
});

test("createPeriodicityMeter refuses a window too short for any lag", () => {
  expect(() => createPeriodicityMeter({ sampleRateHz: rate, windowMs: 2, minHz: 60, maxHz: 400 })).toThrow(
    /window of 2 ms/,
  );
});
