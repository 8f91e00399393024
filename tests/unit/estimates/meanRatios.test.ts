import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { meanRatios } from "../../../src/estimates/meanRatios.ts";
import { durationRatios } from "../../../src/estimates/ratios.ts";
import { tMultiplier } from "../../../src/statistics/distributions.ts";
import { fiellerInterval } from "../../../src/statistics/ratioOfMeans.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { plainToken, sampleTokens } from "./sampleTokens.ts";

const vowels = { contrast: "vowel-length" } as const;

test("meanRatios has the arithmetic ratio of durationRatios, whether phones are apart or together", () => {
  const cells = cellsFromTokens(sampleTokens(6000, 8, 30));
  for (const by of [["phone"], []] as const) {
    const plain = durationRatios(cells, { ...vowels, by });
    const rows = meanRatios(cells, { ...vowels, by, resamples: 99 });
    expect(rows).toHaveLength(plain.rows.length);
    for (const [i, row] of rows.entries()) {
      expect(row.estimate).toBeCloseTo(plain.rows[i]!.arithmetic, 10);
      expect(row.fieller!.low).toBeLessThan(row.estimate);
      expect(row.fieller!.high).toBeGreaterThan(row.estimate);
      expect(row.bootstrap!.low).toBeLessThan(row.estimate);
      expect(row.bootstrap!.high).toBeGreaterThan(row.estimate);
    }
  }
});

test("meanRatios of equal speakers is Fieller's interval of the speakers' means", () => {
  const long = [120, 150, 100, 140];
  const short = [50, 70, 55, 60];
  const make = (k: number, length: string, durationMs: number) =>
    [-5, 0, 5].map((d) => ({ ...plainToken, speaker: `s${k}`, length, durationMs: durationMs + d }));
  const tokens = long.flatMap((ms, k) => [...make(k, "long", ms), ...make(k, "short", short[k]!)]);
  const mean = (x: number[]) => x.reduce((a, b) => a + b) / 4;
  const product = (x: number[], y: number[]) =>
    x.reduce((sum, value, k) => sum + (value - mean(x)) * (y[k]! - mean(y)), 0) / 3 / 4;
  const wanted = fiellerInterval(
    {
      numerator: mean(long),
      denominator: mean(short),
      numeratorVariance: product(long, long),
      denominatorVariance: product(short, short),
      covariance: product(long, short),
    },
    tMultiplier(0.95, 3),
  );
  const [row] = meanRatios(cellsFromTokens(tokens), vowels);
  expect(row!.fieller!.low).toBeCloseTo(wanted.low!, 10);
  expect(row!.fieller!.high).toBeCloseTo(wanted.high!, 10);
});

test("meanRatios' two intervals hold the true ratio of means about as often as they say", () => {
  const random = seededRandom(17);
  const held = { fieller: 0, bootstrap: 0 };
  const draws = 250;
  for (let draw = 0; draw < draws; draw++) {
    const tokens = Array.from({ length: 25 }, (_, k) => {
      const tempo = 50 * Math.exp(0.2 * random.normal());
      const ratio = 2.4 + 0.3 * random.normal();
      const make = (length: string, mean: number, count: number) =>
        Array.from({ length: count }, () => ({
          ...plainToken,
          speaker: `s${k}`,
          length,
          durationMs: mean * (1 + 0.3 * random.normal()),
        }));
      return [...make("long", ratio * tempo, 6), ...make("short", tempo, 20)];
    }).flat();
    const [row] = meanRatios(cellsFromTokens(tokens), { ...vowels, resamples: 399, seed: draw });
    for (const name of ["fieller", "bootstrap"] as const)
      if (row![name]!.low <= 2.4 && 2.4 <= row![name]!.high) held[name]++;
  }
  for (const name of ["fieller", "bootstrap"] as const) {
    expect(held[name] / draws, name).toBeGreaterThan(0.9);
    expect(held[name] / draws, name).toBeLessThan(0.99);
  }
});

test("meanRatios has no row for one speaker", () => {
  expect(meanRatios(cellsFromTokens(sampleTokens(500, 1, 3)), vowels)).toEqual([]);
});
