import { describe, expect, test } from "vitest";
import { multitaperPower, taperVarianceHz2 } from "../../../src/signals/multitaperPower.ts";

const rateHz = 16_000;

/** Central second moment of a spectrum, Hz², about the frequency `hz`. */
function variance(power: Float64Array, binHz: number, hz: number): number {
  let total = 0;
  let second = 0;
  power.forEach((p, k) => {
    total += p;
    second += p * (k * binHz - hz) ** 2;
  });
  return second / total;
}

describe("multitaperPower", () => {
  test("keeps the energy of a stretch as mean over its tapers (Parseval)", () => {
    const samples = Float32Array.from({ length: 160 }, (_, i) => ((i * 7919) % 13) / 13 - 0.5);
    const power = multitaperPower(samples, 0, 160, 3, 1024)!;
    let spectral = power[0]! + power[512]!;
    for (let k = 1; k < 512; k++) spectral += 2 * power[k]!;
    let energy = 0;
    for (let i = 0; i < 160; i++)
      for (let k = 1; k <= 3; k++)
        energy += (samples[i]! * Math.sin((Math.PI * k * (i + 0.5)) / 160)) ** 2 / 3;
    expect(spectral / 1024).toBeCloseTo(energy, 9);
  });

  test("widens a tone by what taperVarianceHz2 says, within 5 % (the sum ends at half the sample rate)", () => {
    for (const [tapers, ms] of [
      [3, 8],
      [5, 10],
      [5, 40],
    ] as const) {
      const length = ms * 16;
      const tone = Float32Array.from({ length }, (_, i) => Math.cos((2 * Math.PI * 4000 * i) / rateHz));
      const power = multitaperPower(tone, 0, length, tapers, 2048)!;
      const found = variance(power, rateHz / 2048, 4000);
      expect(Math.abs(found / taperVarianceHz2(tapers, ms / 1000) - 1)).toBeLessThan(0.05);
    }
  });

  test("is null for an empty stretch and throws for one longer than the spectrum", () => {
    expect(multitaperPower(new Float32Array(100), 100, 120, 3, 1024)).toBeNull();
    expect(multitaperPower(new Float32Array(100), 60, 50, 3, 1024)).toBeNull();
    expect(() => multitaperPower(new Float32Array(2000), 0, 1025, 3, 1024)).toThrow(RangeError);
  });
});
