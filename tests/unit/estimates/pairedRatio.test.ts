import { expect, test } from "vitest";
import { pairedRatio, type Stratum } from "../../../src/estimates/pairedRatio.ts";
import { tQuantile } from "../../../src/statistics/distributions.ts";

const sums = (values: readonly number[]) => ({
  tokens: values.length,
  sumLogMs: values.reduce((a, b) => a + b, 0),
  sumSquareLogMs: values.reduce((a, b) => a + b * b, 0),
});
const stratum = (
  speaker: number,
  phone: number,
  long: readonly number[],
  short: readonly number[],
): Stratum => ({
  speaker,
  phone,
  long: sums(long),
  short: sums(short),
});

test("pairedRatio of equal speakers is the t interval of their log ratios", () => {
  const gaps = [0.7, 0.9, 0.95, 1.2];
  const strata = gaps.map((gap, k) => stratum(k, 0, [4 + gap - 0.01, 4 + gap + 0.01], [3.99, 4.01]));
  const mean = 0.9375;
  const sd = Math.sqrt(gaps.reduce((sum, gap) => sum + (gap - mean) ** 2, 0) / 3);
  const got = pairedRatio(strata, 0.95)!;
  expect(Math.log(got.estimate)).toBeCloseTo(mean, 12);
  expect(Math.log(got.high)).toBeCloseTo(mean + (tQuantile(0.975, 3) * sd) / 2, 8);
  expect(got.equalWeight!.estimate).toBeCloseTo(got.estimate, 12);
  expect(got).toMatchObject({ speakers: 4, method: "clustered" });
});

test("pairedRatio weights strata as least squares with an intercept for each stratum does", () => {
  // Two strata: gaps 1 (weight 2·2/4 = 1) and 0.5 (weight 1·3/4 = 0.75).
  const strata = [stratum(0, 0, [4.9, 5.1], [3.9, 4.1]), stratum(0, 1, [4.5], [3.9, 4, 4.1])];
  expect(Math.log(pairedRatio(strata, 0.95)!.estimate)).toBeCloseTo((1 + 0.75 * 0.5) / 1.75, 12);
});

test("pairedRatio counts a speaker the same in equalWeight whatever the number of tokens", () => {
  const many = Array.from({ length: 100 }, (_, i) => 5 + (i % 2) / 10);
  const got = pairedRatio([stratum(0, 0, many, [4, 4.1]), stratum(1, 0, [4.2, 4.4], [4, 4.1])], 0.95)!;
  expect(Math.log(got.equalWeight!.estimate)).toBeCloseTo((1 + 0.25) / 2, 12);
});

test("pairedRatio is null when nothing varies", () => {
  expect(pairedRatio([stratum(0, 0, [5, 5], [4, 4])], 0.95)).toBeNull();
  expect(pairedRatio([stratum(0, 0, [5], [4])], 0.95)).toBeNull();
});
