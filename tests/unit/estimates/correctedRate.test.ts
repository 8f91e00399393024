import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../src/estimates/cellsFromTokens.ts";
import { clusteredRate } from "../../../src/estimates/clusteredRate.ts";
import { correctedRate } from "../../../src/estimates/correctedRate.ts";
import { devoicingRates } from "../../../src/estimates/rates.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { sampleTokens } from "./sampleTokens.ts";

const accuracy = (correct1: number, of1: number, correct0: number, of0: number) => ({
  sensitivity: { correct: correct1, of: of1 },
  specificity: { correct: correct0, of: of0 },
});

test("correctedRate undoes the errors that the accuracy predicts", () => {
  for (const truth of [0.05, 0.4, 0.93]) {
    const seen = truth * 0.9 + (1 - truth) * 0.05;
    const got = correctedRate({ estimate: seen, low: seen, high: seen }, accuracy(90, 100, 95, 100), 0.95)!;
    expect(got.estimate).toBeCloseTo(truth, 12);
    expect(got.low).toBeLessThan(truth);
    expect(got.high).toBeGreaterThan(truth);
  }
});

test("correctedRate by a faultless decision tested without end is the rate itself", () => {
  const rate = { estimate: 0.3, low: 0.2, high: 0.42 };
  const got = correctedRate(rate, accuracy(1e12, 1e12, 1e12, 1e12), 0.95)!;
  for (const name of ["estimate", "low", "high"] as const) expect(got[name]).toBeCloseTo(rate[name], 6);
});

test("correctedRate stays inside 0 and 1, says what it was before, and refuses a decision no better than chance", () => {
  const got = correctedRate({ estimate: 0.02, low: 0.01, high: 0.03 }, accuracy(90, 100, 95, 100), 0.95)!;
  expect(got).toMatchObject({ estimate: 0, low: 0 });
  expect(got.unclipped).toBeCloseTo((0.02 - 0.05) / 0.85, 12);
  expect(correctedRate({ estimate: 0.5, low: 0.4, high: 0.6 }, accuracy(5, 10, 5, 10), 0.95)).toBeNull();
  expect(correctedRate({ estimate: 0.5, low: 0.4, high: 0.6 }, accuracy(0, 0, 5, 10), 0.95)).toBeNull();
});

// Sensitivity 0.9 and specificity 0.95, each tested on 300 vowels in every draw.
test("correctedRate is unbiased within half a point and its interval holds the truth", () => {
  const random = seededRandom(12);
  for (const truth of [0.2, 0.6, 0.85]) {
    let sum = 0;
    let held = 0;
    const draws = 1500;
    for (let draw = 0; draw < draws; draw++) {
      const marked = Array.from({ length: 20 }, () => 40);
      const devoiced = marked.map((n) => {
        const logit = Math.log(truth / (1 - truth)) + 0.2 * random.normal();
        const own = random.binomial(n, 1 / (1 + Math.exp(-logit)));
        return random.binomial(own, 0.9) + random.binomial(n - own, 0.05);
      });
      const tested = accuracy(random.binomial(300, 0.9), 300, random.binomial(300, 0.95), 300);
      const got = correctedRate(clusteredRate(marked, devoiced, 0.95), tested, 0.95)!;
      sum += got.estimate;
      held += got.low <= truth && truth <= got.high ? 1 : 0;
    }
    expect(Math.abs(sum / draws - truth)).toBeLessThan(0.005);
    expect(held / draws).toBeGreaterThan(0.93);
    expect(held / draws).toBeLessThan(0.98);
  }
});

test("devoicingRates corrects measured devoicing only", () => {
  const tokens = sampleTokens(2000, 3, 3);
  const measured = tokens.map((t) => ({ ...t, devoicedBasis: t.devoicedBasis && "measured" }));
  const options = { accuracy: accuracy(90, 100, 95, 100) };
  expect(devoicingRates(cellsFromTokens(tokens), options).rows[0]!.corrected).toBeNull();
  const [row] = devoicingRates(cellsFromTokens(measured), options).rows;
  expect(row!.corrected!.estimate).toBeCloseTo((row!.estimate! - 0.05) / 0.85, 12);
});
