import { expect, test } from "vitest";
import { bandLevels, floorDb } from "../../../src/signals/bandLevels.ts";

const options = {
  sampleRateHz: 16_000,
  hopMs: 5,
  windowMs: 25,
  bands: [
    { fromHz: 90, toHz: 600 },
    { fromHz: 600, toHz: 3000 },
    { fromHz: 3000, toHz: 8000 },
  ],
};
const tone = (hz: number, amplitude: number) =>
  Float32Array.from({ length: 8000 }, (_, i) => amplitude * Math.sin((2 * Math.PI * hz * i) / 16_000));

test("bandLevels puts a full-scale sine at −3.0103 dB in its band (10·log10 ½) and far lower elsewhere", () => {
  const [low, mid, high] = bandLevels(tone(1500, 1), options);
  expect(mid![50]).toBeCloseTo(-3.0103, 2);
  expect(low![50]).toBeLessThan(-60);
  expect(high![50]).toBeLessThan(-60);
});

test("bandLevels falls by 20·log10 2 = 6.0206 dB when the amplitude halves", () => {
  const full = bandLevels(tone(300, 0.5), options)[0]![50]!;
  const half = bandLevels(tone(300, 0.25), options)[0]![50]!;
  expect(full - half).toBeCloseTo(6.0206, 3);
});

test("bandLevels gives the floor for digital silence and one frame per whole hop", () => {
  const [low] = bandLevels(new Float32Array(8050), options);
  expect(low!.length).toBe(100);
  expect(new Set(low)).toEqual(new Set([floorDb]));
  expect(bandLevels(new Float32Array(0), options)[0]!.length).toBe(0);
});

test("bandLevels of white noise shares power by bandwidth (510 : 2400 : 5000 Hz)", () => {
  let seed = 7;
  const noise = Float32Array.from({ length: 160_000 }, () => {
    seed = (Math.imul(seed, 1664525) + 1013904223) | 0;
    return seed / 2 ** 32;
  });
  const mean = bandLevels(noise, options).map(
    (levels) => levels.reduce((sum, db) => sum + 10 ** (db / 10), 0) / levels.length,
  );
  expect(10 * Math.log10(mean[1]! / mean[0]!)).toBeCloseTo(10 * Math.log10(2400 / 510), 0);
  expect(10 * Math.log10(mean[2]! / mean[1]!)).toBeCloseTo(10 * Math.log10(5000 / 2400), 0);
});
