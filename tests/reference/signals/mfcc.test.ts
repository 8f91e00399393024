import { describe, expect, test } from "vitest";
import { makeDct, makeLifter, melCepstrum } from "../../../src/signals/mfcc.ts";

describe("makeDct", () => {
  const channels = 24;
  const dct = makeDct(channels, channels);
  test("rows follow √(2/N)·cos(πk(m−½)/N)", () => {
    for (const [k, m] of [
      [0, 1],
      [1, 1],
      [5, 7],
      [23, 24],
    ] as const) {
      expect(dct[k * channels + m - 1]).toBeCloseTo(
        Math.sqrt(2 / channels) * Math.cos((Math.PI * k * (m - 0.5)) / channels),
        14,
      );
    }
  });
  test("rows from 1 on are orthonormal, row 0 has squared length 2", () => {
    for (let i = 0; i < channels; i++) {
      for (let j = 0; j < channels; j++) {
        let dot = 0;
        for (let m = 0; m < channels; m++) dot += dct[i * channels + m]! * dct[j * channels + m]!;
        expect(dot).toBeCloseTo(i === j ? (i === 0 ? 2 : 1) : 0, 12);
      }
    }
  });
});

test("makeLifter(13, 22) follows 1 + (L/2)·sin(πn/L): 1, 2.565…, and L/2 + 1 at n = 11", () => {
  const lifter = makeLifter(13, 22);
  expect(lifter[0]).toBe(1);
  expect(lifter[1]).toBeCloseTo(1 + 11 * Math.sin(Math.PI / 22), 14);
  expect(lifter[11]).toBeCloseTo(12, 14);
});

describe("melCepstrum", () => {
  const channels = 26;
  const dct = makeDct(13, channels);
  const logs = new Float64Array(channels);
  const out = new Float64Array(13);
  test("a flat spectrum of power e³ gives c0 = 3√(2N) and nothing else", () => {
    melCepstrum(new Float64Array(channels).fill(Math.exp(3)), dct, 1e-12, logs, out);
    expect(out[0]).toBeCloseTo(3 * Math.sqrt(2 * channels), 10);
    for (let k = 1; k < 13; k++) expect(out[k]).toBeCloseTo(0, 10);
  });
  test("a cosine ripple of order 4 in the log spectrum shows in c4 alone, as √(N/2) times its height", () => {
    const ripple = Float64Array.from({ length: channels }, (_, m) =>
      Math.exp(0.7 * Math.cos((Math.PI * 4 * (m + 0.5)) / channels)),
    );
    melCepstrum(ripple, dct, 1e-12, logs, out);
    for (let k = 0; k < 13; k++) expect(out[k]).toBeCloseTo(k === 4 ? 0.7 * Math.sqrt(channels / 2) : 0, 10);
  });
  test("power below the floor counts as the floor", () => {
    melCepstrum(new Float64Array(channels), dct, 1e-6, logs, out);
    expect(logs[3]).toBeCloseTo(Math.log(1e-6), 12);
  });
});
