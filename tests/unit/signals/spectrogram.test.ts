import { describe, expect, test } from "vitest";
import { silenceDb, spectrogram } from "../../../src/signals/spectrogram.ts";

const sampleRateHz = 16_000;
const options = { sampleRateHz, fromMs: 100, toMs: 400, columns: 30, rows: 32, toHz: 8000, windowMs: 16 };
const tone = (hz: number, amplitude = 1) =>
  Float32Array.from({ length: 8000 }, (_, i) => amplitude * Math.sin((2 * Math.PI * hz * i) / sampleRateHz));
const column = (levels: Float32Array, at: number) =>
  Array.from({ length: options.rows }, (_, row) => levels[row * options.columns + at]!);

describe("spectrogram", () => {
  test.each([1000, 2500, 6125])(
    "a full-scale sine of %d Hz reads 0 dB in its row and is highest there",
    (hz) => {
      const levels = spectrogram(tone(hz), options);
      for (const at of [0, 15, 29]) {
        const values = column(levels, at);
        const highest = Math.max(...values);
        expect(highest).toBeCloseTo(0, 1);
        // A tone on the border of two rows is as high in both.
        expect(values[Math.floor(hz / 250)]!).toBeGreaterThan(highest - 0.5);
      }
    },
  );

  test("a tone between two bins of the transform loses at most 0.4 dB", () => {
    const halfABin = sampleRateHz / 512 / 2;
    const highest = Math.max(...spectrogram(tone(1000 + halfABin), options));
    expect(highest).toBeLessThan(0.01);
    expect(highest).toBeGreaterThan(-0.4);
  });

  test("half the amplitude reads 6.02 dB less", () => {
    const full = Math.max(...spectrogram(tone(1000), options));
    expect(full - Math.max(...spectrogram(tone(1000, 0.5), options))).toBeCloseTo(20 * Math.log10(2), 3);
  });

  test("digital silence, and what lies before and after the file, reads −120 dB", () => {
    expect(new Set(spectrogram(new Float32Array(8000), options))).toEqual(new Set([silenceDb]));
    const beyond = spectrogram(tone(1000), { ...options, fromMs: -300, toMs: 900 });
    expect(new Set(column(beyond, 0))).toEqual(new Set([silenceDb]));
    expect(new Set(column(beyond, 29))).toEqual(new Set([silenceDb]));
    expect(Math.max(...column(beyond, 15))).toBeCloseTo(0, 1);
  });

  test("samples that are not finite count as 0", () => {
    const broken = tone(1000).fill(Number.NaN, 3000, 3400);
    expect(spectrogram(broken, options)).toEqual(spectrogram(tone(1000).fill(0, 3000, 3400), options));
  });

  test.each([
    [{ toMs: 100 }, /empty/],
    [{ rows: 0 }, /show nothing/],
    [{ toHz: 9000 }, /half the sample rate/],
  ])("refuses %j", (wrong, rule) => {
    expect(() => spectrogram(tone(1000), { ...options, ...wrong })).toThrow(rule);
  });
});
