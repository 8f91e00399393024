import { expect, test } from "vitest";
import { createPredictor } from "../../../src/signals/linearPrediction.ts";
import { resonances } from "../../../src/signals/resonances.ts";

/** Coefficients of 1 / Π (1 − 2r cos θ z⁻¹ + r² z⁻²). */
function allPole(poles: readonly (readonly [number, number])[], rate: number): Float64Array {
  let polynomial = [1];
  for (const [hz, bandwidthHz] of poles) {
    const r = Math.exp((-Math.PI * bandwidthHz) / rate);
    const section = [1, -2 * r * Math.cos((2 * Math.PI * hz) / rate), r * r];
    const next = new Array<number>(polynomial.length + 2).fill(0);
    for (const [i, a] of polynomial.entries()) for (const [j, b] of section.entries()) next[i + j]! += a * b;
    polynomial = next;
  }
  return Float64Array.from(polynomial.slice(1));
}

const poles = [
  [500, 60],
  [1500, 90],
  [2500, 120],
  [3500, 200],
  [4500, 300],
] as const;

test("resonances finds frequencies and bandwidths a filter was built from", () => {
  const found = resonances(allPole(poles, 11_000), 11_000)!;
  for (const [i, [hz, bandwidthHz]] of poles.entries()) {
    expect(found[i]!.hz).toBeCloseTo(hz, 6);
    expect(found[i]!.bandwidthHz).toBeCloseTo(bandwidthHz, 6);
  }
});

test("resonances leaves real poles out and reflects what lies outside the unit circle", () => {
  expect(resonances(Float64Array.of(-0.9), 8000)).toEqual([]);
  const outside = resonances(Float64Array.of(-2 * 1.1 * Math.cos(1), 1.1 * 1.1), 8000)!;
  expect(outside[0]!.hz).toBeCloseTo(8000 / (2 * Math.PI), 6);
  expect(outside[0]!.bandwidthHz).toBeGreaterThan(0);
});

test("createPredictor recovers the filter from its impulse response to seven digits", () => {
  const truth = allPole(poles, 11_000);
  const response = new Float64Array(300);
  for (let n = 0; n < response.length; n++) {
    response[n] = n === 0 ? 1 : 0;
    for (let k = 1; k <= truth.length && k <= n; k++) response[n]! -= truth[k - 1]! * response[n - k]!;
  }
  const predictor = createPredictor(10, 300);
  expect(predictor.fit(response, 300)).toBe(true);
  for (let k = 0; k < 10; k++) expect(Math.abs(predictor.coefficients[k]! - truth[k]!)).toBeLessThan(1e-4);
});

test("createPredictor refuses silence and frames shorter than three orders", () => {
  const predictor = createPredictor(12, 300);
  expect(predictor.fit(new Float64Array(300), 300)).toBe(false);
  expect(
    predictor.fit(
      Float64Array.from({ length: 300 }, () => 1),
      30,
    ),
  ).toBe(false);
});
