import { expect, test } from "vitest";
import { normalCdf, normalQuantile, tQuantile, tTwoSidedP } from "../../../src/statistics/distributions.ts";

test("normalQuantile(0.975) is the constant printed in tables", () => {
  expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13);
});

test("normalCdf undoes normalQuantile", () => {
  for (const p of [1e-9, 0.001, 0.2, 0.5, 0.77, 0.9999])
    expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 12);
});

// Closed forms of Student's t: df 1 is Cauchy, tan(π(p − ½)); df 2 is (2p − 1)·√(2 / (4p(1 − p))).
test("tQuantile is the closed form at one and two degrees of freedom", () => {
  for (const p of [0.6, 0.9, 0.975, 0.999]) {
    expect(tQuantile(p, 1) / Math.tan(Math.PI * (p - 0.5))).toBeCloseTo(1, 10);
    expect(tQuantile(p, 2) / ((2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p))))).toBeCloseTo(1, 10);
  }
});

test("tQuantile falls towards the normal quantile as degrees of freedom grow, whole or not", () => {
  const dfs = [0.5, 0.8, 1, 1.5, 2, 3.7, 10, 99.5, 1e4, 1e6, 1e7];
  const quantiles = dfs.map((df) => tQuantile(0.975, df));
  for (const [i, q] of quantiles.entries()) if (i > 0) expect(q).toBeLessThan(quantiles[i - 1]!);
  expect(quantiles.at(-1)).toBeCloseTo(1.959964, 5);
});

test("tTwoSidedP undoes tQuantile", () => {
  for (const df of [1, 2.5, 9, 49, 1e5]) expect(tTwoSidedP(tQuantile(0.975, df), df)).toBeCloseTo(0.05, 10);
  expect(tTwoSidedP(0, 5)).toBe(1);
});
