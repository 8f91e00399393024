import { describe, expect, test } from "vitest";
import { backgroundLevels } from "../../../src/measures/acoustics/backgroundLevels.ts";
import { consonantParts } from "../../../src/measures/acoustics/consonantParts.ts";
import type { MeasuredPhone } from "../../../src/measures/acoustics/measuredPhone.ts";
import { analyseVoicing } from "../../../src/measures/acoustics/voicingFrames.ts";
import { averagePower } from "../../../src/signals/averagePower.ts";
import { type SpectralMoments, spectralMoments } from "../../../src/signals/spectralMoments.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const fromHz = 500;
const toHz = 7500;

/** White noise of 4 s through one resonance, and the analytic moments of that filter's |H(f)|² over the band. */
function filteredNoise(hz: number, bandwidthHz: number): { noise: Float32Array; moments: SpectralMoments } {
  const random = seededRandom(3);
  const radius = Math.exp((-Math.PI * bandwidthHz) / 16_000);
  const first = 2 * radius * Math.cos((2 * Math.PI * hz) / 16_000);
  const second = -radius * radius;
  const noise = new Float32Array(64_000);
  for (let i = 0; i < noise.length; i++) {
    noise[i] = random.normal() + first * (noise[i - 1] ?? 0) + second * (noise[i - 2] ?? 0);
  }
  const power = (f: number) => {
    const w = (2 * Math.PI * f) / 16_000;
    const re = 1 - first * Math.cos(w) - second * Math.cos(2 * w);
    const im = first * Math.sin(w) + second * Math.sin(2 * w);
    return 1 / (re * re + im * im);
  };
  const sum = (value: (f: number) => number) => {
    let total = 0;
    for (let f = fromHz + 0.5; f < toHz; f++) total += value(f) * power(f);
    return total;
  };
  const total = sum(() => 1);
  const centreHz = sum((f) => f) / total;
  const spreadHz = Math.sqrt(sum((f) => (f - centreHz) ** 2) / total);
  const skewness = sum((f) => (f - centreHz) ** 3) / total / spreadHz ** 3;
  return { noise, moments: { centreHz, spreadHz, skewness, peakHz: hz } };
}

describe("spectralMoments of averagePower, against the filter's own response", () => {
  for (const [hz, bandwidthHz] of [
    [2500, 1200],
    [4500, 2000],
    [6000, 1500],
  ] as const) {
    test(`gives the analytic moments within 2 % for noise around ${hz} Hz`, () => {
      const { noise, moments } = filteredNoise(hz, bandwidthHz);
      const found = spectralMoments(averagePower(noise, 0, noise.length, 256)!, 62.5, fromHz, toHz)!;
      expect(Math.abs(found.centreHz / moments.centreHz - 1)).toBeLessThan(0.02);
      expect(Math.abs(found.spreadHz / moments.spreadHz - 1)).toBeLessThan(0.02);
      expect(Math.abs(found.skewness - moments.skewness)).toBeLessThan(
        0.03 + 0.02 * Math.abs(moments.skewness),
      );
    });
  }

  test("gives centre 4000, spread 4000/√12 and skewness 0 for a flat band from 2 to 6 kHz (uniform distribution)", () => {
    const power = Float64Array.from({ length: 8001 }, (_, hz) => (hz >= 2000 && hz <= 6000 ? 1 : 0));
    const found = spectralMoments(power, 1, fromHz, toHz)!;
    expect(found.centreHz).toBeCloseTo(4000, 6);
    expect(found.spreadHz).toBeCloseTo(4000 / Math.sqrt(12), 0);
    expect(found.skewness).toBeCloseTo(0, 9);
  });

  test("gives skewness 2√2/5 = 0.5657 for a triangle that falls from 2 to 6 kHz (triangular distribution, closed form)", () => {
    const power = Float64Array.from({ length: 8001 }, (_, hz) => Math.max(0, hz >= 2000 ? 6000 - hz : 0));
    const found = spectralMoments(power, 1, fromHz, toHz)!;
    expect(found.centreHz).toBeCloseTo(2000 + 4000 / 3, 0);
    expect(found.spreadHz).toBeCloseTo(4000 / Math.sqrt(18), 0);
    expect(found.skewness).toBeCloseTo((2 * Math.SQRT2) / 5, 3);
    expect(found.peakHz).toBeGreaterThanOrEqual(2000);
    expect(found.peakHz).toBeLessThan(2200);
  });

  test("is null for a band without power", () => {
    expect(spectralMoments(new Float64Array(129), 62.5, fromHz, toHz)).toBeNull();
  });
});

describe("consonantParts of bursts of filtered noise after silence, against the filter's own response", () => {
  const burstMs = 60;
  const closureMs = 80;

  /** k after k: each a closure and a burst cut from the noise. */
  function bursts(noise: Float32Array): { samples: Float32Array; phones: MeasuredPhone[] } {
    const [burst, closure] = [burstMs * 16, closureMs * 16];
    const count = Math.floor(noise.length / burst);
    const samples = new Float32Array(count * (burst + closure));
    for (let b = 0; b < count; b++)
      samples.set(
        noise.subarray(b * burst, (b + 1) * burst).map((x) => 0.02 * x),
        b * (burst + closure) + closure,
      );
    const phones = Array.from({ length: count }, (_, b) => ({
      ...{ phone: "k", closureEndMs: null },
      ...{ startMs: b * (burstMs + closureMs), endMs: (b + 1) * (burstMs + closureMs) },
    })) as MeasuredPhone[];
    return { samples, phones };
  }

  for (const [hz, bandwidthHz] of [
    [1500, 900],
    [3200, 1200],
  ] as const) {
    test(`finds the release of k, its centre within 2 % and its spread within 6 % on average, for noise around ${hz} Hz`, () => {
      const { noise, moments } = filteredNoise(hz, bandwidthHz);
      const { samples, phones } = bursts(noise);
      const frames = analyseVoicing(samples);
      const floor = backgroundLevels(frames, phones);
      const parts = phones.map((phone) => consonantParts(samples, frames, phone, floor));
      expect(parts.length).toBeGreaterThan(60);
      expect(parts.every(({ release }) => release !== null)).toBe(true);
      for (const { closureMs: found } of parts) expect(Math.abs(found! - closureMs)).toBeLessThanOrEqual(10);
      const mean = (of: (m: SpectralMoments) => number) =>
        parts.reduce((sum, { release }) => sum + of(release!), 0) / parts.length;
      expect(Math.abs(mean((m) => m.centreHz) / moments.centreHz - 1)).toBeLessThan(0.02);
      expect(Math.abs(mean((m) => m.spreadHz) / moments.spreadHz - 1)).toBeLessThan(0.06);
    });
  }
});
