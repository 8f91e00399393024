import { describe, expect, test } from "vitest";
import { acousticColumns } from "../../../src/measures/acousticColumns.ts";
import { backgroundLevels } from "../../../src/measures/acoustics/backgroundLevels.ts";
import { consonantParts } from "../../../src/measures/acoustics/consonantParts.ts";
import type { MeasuredPhone } from "../../../src/measures/acoustics/measuredPhone.ts";
import { analyseVoicing } from "../../../src/measures/acoustics/voicingFrames.ts";
import { averagePower } from "../../../src/signals/averagePower.ts";
import { type SpectralMoments, spectralMoments } from "../../../src/signals/spectralMoments.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

const fromHz = 500;
const toHz = 7500;

interface Analytic {
  readonly moments: Omit<SpectralMoments, "peakHz">;
  /** Least standard error of each over a stretch of 1 s; of T seconds, √T of it. */
  readonly standardError: { readonly centreHz: number; readonly spreadHz: number };
}

/** Moments of a spectrum over a band, and how far Gaussian noise of that spectrum allows them to be known. */
function limitsOf(power: (hz: number) => number, from: number, to: number): Analytic {
  const sum = (value: (f: number) => number) => {
    let total = 0;
    for (let f = from + 0.5; f < to; f++) total += value(f) * power(f);
    return total;
  };
  const total = sum(() => 1);
  const centreHz = sum((f) => f) / total;
  const spreadHz = Math.sqrt(sum((f) => (f - centreHz) ** 2) / total);
  const skewness = sum((f) => (f - centreHz) ** 3) / total / spreadHz ** 3;
  const error = (influence: (away: number) => number) =>
    Math.sqrt(sum((f) => influence(f - centreHz) ** 2 * power(f))) / total;
  return {
    moments: { centreHz, spreadHz, skewness },
    standardError: {
      centreHz: error((away) => away),
      spreadHz: error((away) => (away ** 2 - spreadHz ** 2) / (2 * spreadHz)),
    },
  };
}

/** White noise through one resonance, and the analytic moments of that filter's |H(f)|² over the band. */
function filteredNoise(hz: number, bandwidthHz: number, seconds = 4): Analytic & { noise: Float32Array } {
  const random = seededRandom(3);
  const radius = Math.exp((-Math.PI * bandwidthHz) / 16_000);
  const first = 2 * radius * Math.cos((2 * Math.PI * hz) / 16_000);
  const second = -radius * radius;
  const noise = new Float32Array(Math.round(16_000 * seconds));
  for (let i = 0; i < noise.length; i++) {
    noise[i] = random.normal() + first * (noise[i - 1] ?? 0) + second * (noise[i - 2] ?? 0);
  }
  const power = (f: number) => {
    const w = (2 * Math.PI * f) / 16_000;
    const re = 1 - first * Math.cos(w) - second * Math.cos(2 * w);
    const im = first * Math.sin(w) + second * Math.sin(2 * w);
    return 1 / (re * re + im * im);
  };
  return { noise, ...limitsOf(power, fromHz, toHz) };
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
  const closureMs = 80;

  /** k after k: each a closure and a burst cut from the noise. */
  function bursts(noise: Float32Array, burstMs: number): { samples: Float32Array; phones: MeasuredPhone[] } {
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

  // What is analysed of a release of 17 ms is 10 ms long, of one of 60 ms 36.
  for (const [hz, bandwidthHz] of [
    [1500, 900],
    [3200, 1200],
    [4500, 2000],
  ] as const) {
    for (const burstMs of [17, 60]) {
      describe(`noise around ${hz} Hz for ${burstMs} ms`, () => {
        const { noise, moments, standardError } = filteredNoise(hz, bandwidthHz, 0.4 * burstMs);
        const { samples, phones } = bursts(noise, burstMs);
        const frames = analyseVoicing(samples);
        const floor = backgroundLevels(frames, phones);
        const parts = phones.map((phone) => consonantParts(samples, frames, phone, floor));
        const analysedSec = Math.min(0.04, (0.6 * burstMs) / 1000);
        const of = (name: "centreHz" | "spreadHz") => parts.map(({ release }) => release![name]);
        const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x) / values.length;

        test("finds every release within 10 ms", () => {
          expect(parts.length).toBeGreaterThan(390);
          expect(parts.every(({ release }) => release !== null)).toBe(true);
          for (const { closureMs: found } of parts)
            expect(Math.abs(found! - closureMs)).toBeLessThanOrEqual(10);
        });

        for (const name of ["centreHz", "spreadHz"] as const) {
          test(`gives the analytic ${name} within 2 % on average`, () => {
            expect(Math.abs(mean(of(name)) / moments[name] - 1)).toBeLessThan(0.02);
          });

          // Bound: ∫g²S² ∕ T(∫S)² of a spectral mean ∫gS ∕ ∫S, the Whittle likelihood's (Dzhaparidze 1986, from memory).
          test(`lets the ${name} of one release scatter by no more than a tenth above what its length allows`, () => {
            const values = of(name);
            const middle = mean(values);
            const scatter = Math.sqrt(mean(values.map((x) => (x - middle) ** 2)));
            const limit = standardError[name] / Math.sqrt(analysedSec);
            expect(scatter / limit).toBeLessThan(1.1);
            expect(scatter / limit).toBeGreaterThan(0.9);
          });
        }
      });
    }
  }

  test("has the standard error of the columns' text for a bell-shaped spectrum: 119 and 73 Hz at 1000 Hz and 10 ms", () => {
    const power = (f: number) => Math.exp(-0.5 * ((f - 4000) / 1000) ** 2);
    const { centreHz, spreadHz } = limitsOf(power, -4000, 12_000).standardError;
    expect(centreHz / Math.sqrt(0.01)).toBeCloseTo(119, 0);
    expect(spreadHz / Math.sqrt(0.01)).toBeCloseTo(73, 0);
    for (const [column, figure] of [
      ["releaseCentreHz", "119 Hz"],
      ["releaseSpreadHz", "73 Hz"],
    ] as const)
      expect(acousticColumns[column].description).toContain(figure);
  });
});
