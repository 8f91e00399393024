import { describe, expect, test } from "vitest";
import { makeWindow } from "../../../src/signals/window.ts";

const sum = (x: Float64Array) => x.reduce((total, v) => total + v, 0);
const sumSquares = (x: Float64Array) => x.reduce((total, v) => total + v * v, 0);
/** |Σ w[n]·e^(−i2πfn/N)| relative to f = 0, in dB. */
function responseDb(window: Float64Array, bins: number): number {
  let re = 0;
  let im = 0;
  window.forEach((w, n) => {
    re += w * Math.cos((2 * Math.PI * bins * n) / window.length);
    im += w * Math.sin((2 * Math.PI * bins * n) / window.length);
  });
  return 20 * Math.log10(Math.hypot(re, im) / sum(window));
}

/** Closed forms of the Hann window; see Harris F. J. (1978), Proc. IEEE 66(1):51–83, for the terms. */
describe("makeWindow('hann', N)", () => {
  const hann = makeWindow("hann", 1024);
  test("periodic: coherent gain .5, mean square .375, noise bandwidth 1.5 bins", () => {
    expect(sum(hann) / 1024).toBeCloseTo(0.5, 12);
    expect(sumSquares(hann) / 1024).toBeCloseTo(0.375, 12);
    expect((1024 * sumSquares(hann)) / sum(hann) ** 2).toBeCloseTo(1.5, 12);
  });
  test("periodic: scalloping −1.4236 dB at half a bin, −6.0206 dB at the neighbouring bin", () => {
    expect(responseDb(hann, 0.5)).toBeCloseTo(-1.4236, 4);
    expect(responseDb(hann, 1)).toBeCloseTo(-6.0206, 4);
  });
  test("periodic: copies at 50 % and 75 % overlap add up to a constant", () => {
    for (const hop of [512, 256]) {
      for (let n = 0; n < hop; n++) {
        let total = 0;
        for (let m = n; m < 1024; m += hop) total += hann[m]!;
        expect(total).toBeCloseTo(512 / hop, 12);
      }
    }
  });
  test("symmetric, N = 1024: gain .49951172, noise bandwidth 1.50146628 bins, ends in 0", () => {
    const symmetric = makeWindow("hann", 1024, "symmetric");
    expect(sum(symmetric) / 1024).toBeCloseTo(0.49951172, 8);
    expect((1024 * sumSquares(symmetric)) / sum(symmetric) ** 2).toBeCloseTo(1.50146628, 8);
    expect(symmetric[0]).toBe(0);
    expect(symmetric[1023]).toBeCloseTo(0, 15);
  });
});

test("makeWindow('hamming', N) is .08 at its edge and 1 in its middle; rectangular is 1 everywhere", () => {
  const hamming = makeWindow("hamming", 400);
  expect(hamming[0]).toBeCloseTo(0.08, 12);
  expect(hamming[200]).toBeCloseTo(1, 12);
  expect(makeWindow("rectangular", 5)).toEqual(new Float64Array(5).fill(1));
});

test("makeWindow refuses a length below 1", () => {
  expect(() => makeWindow("hann", 0)).toThrow(/window length 0/);
});
