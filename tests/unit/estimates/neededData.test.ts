import { expect, test } from "vitest";
import { speakersNeeded, tokensNeeded } from "../../../src/estimates/neededData.ts";
import { rateVariation, ratioVariation } from "../../../src/estimates/variation.ts";
import { tMultiplier } from "../../../src/statistics/distributions.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

test("tokensNeeded of one speaker is the textbook sample size: 385 for ± 5 points at one half", () => {
  expect(tokensNeeded({ between: 0, token: 0.25 }, 1, { halfWidth: 0.05 })).toBe(385);
});

test("speakersNeeded is the smallest number that reaches the precision", () => {
  const variation = { between: 0.02, token: 0.2 };
  for (const halfWidth of [0.3, 0.1, 0.05, 0.02]) {
    const needed = speakersNeeded(variation, 40, { halfWidth })!;
    const half = (speakers: number) =>
      tMultiplier(0.95, speakers - 1) * Math.sqrt((0.02 + 0.2 / 40) / speakers);
    expect(half(needed)).toBeLessThanOrEqual(halfWidth);
    if (needed > 2) expect(half(needed - 1)).toBeGreaterThan(halfWidth);
  }
});

test("tokensNeeded and speakersNeeded agree with each other", () => {
  const variation = { between: 0.01, token: 0.2 };
  const each = tokensNeeded(variation, 30, { halfWidth: 0.05 })!;
  expect(speakersNeeded(variation, each, { halfWidth: 0.05 })).toBeLessThanOrEqual(30);
  expect(speakersNeeded(variation, each - 1, { halfWidth: 0.05 })).toBeGreaterThan(30);
});

test("tokensNeeded is null where more tokens of the same speakers cannot help", () => {
  expect(tokensNeeded({ between: 0.04, token: 0.2 }, 5, { halfWidth: 0.05 })).toBeNull();
  expect(tokensNeeded({ between: 0.04, token: 0.2 }, 1, { halfWidth: 0.05 })).toBeNull();
  expect(speakersNeeded({ between: 100, token: 1 }, 1, { halfWidth: 1e-6 })).toBeNull();
});

test("rateVariation and ratioVariation find the variances that the data were drawn with", () => {
  const random = seededRandom(6);
  const marked = Array.from({ length: 3000 }, () => 30 + random.below(30));
  const devoiced = marked.map((n) => random.binomial(n, 0.4 + (random.uniform() < 0.5 ? 0.1 : -0.1)));
  expect(Math.abs(rateVariation(marked, devoiced)!.between / 0.01 - 1)).toBeLessThan(0.1);
  const strata = Array.from({ length: 2000 }, (_, speaker) => {
    const own = 0.9 + 0.2 * random.normal();
    const sums = (mean: number, tokens: number) => {
      const sums = { tokens, sumLogMs: 0, sumSquareLogMs: 0 };
      for (let i = 0; i < tokens; i++) {
        const x = mean + 0.3 * random.normal();
        sums.sumLogMs += x;
        sums.sumSquareLogMs += x * x;
      }
      return sums;
    };
    return { speaker, phone: 0, long: sums(4 + own, 5), short: sums(4, 20) };
  });
  const { between, token } = ratioVariation(strata)!;
  expect(Math.abs(between / 0.04 - 1)).toBeLessThan(0.15);
  // Per long token: 0.09 · (1 + 5 / 20).
  expect(Math.abs(token / 0.1125 - 1)).toBeLessThan(0.05);
  expect(rateVariation([5], [2])).toBeNull();
});
