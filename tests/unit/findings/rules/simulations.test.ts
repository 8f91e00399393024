import { expect, test } from "vitest";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { judgeSimulated, thirtyTokens } from "./judgeSimulated.ts";
import { judgeableRules } from "./shippedRules.ts";
import type { Truth } from "./simulateRule.ts";

// A small version of tests/bench/verdicts.bench.ts, which draws 200 corpora a rule.
const draws = 2;
const rules = await judgeableRules();

function judgedRightly(truth: Truth, wanted: string): number {
  const random = seededRandom(truth === "satisfies" ? 5 : 6);
  let right = 0;
  for (const rule of rules)
    for (let draw = 0; draw < draws; draw++) {
      const { verdict } = judgeSimulated(rule, truth, { speakers: 20, tokens: 60 }, random);
      if (verdict === wanted) right++;
    }
  return right / (draws * rules.length);
}

test("judgeRule bears out at least 95 % of corpora of 20 speakers built to satisfy a rule", () => {
  expect(judgedRightly("satisfies", "borne out")).toBeGreaterThanOrEqual(0.95);
});

test("judgeRule contradicts at least 95 % of corpora of 20 speakers built to break a rule", () => {
  expect(judgedRightly("breaks", "contradicted")).toBeGreaterThanOrEqual(0.95);
});

test("judgeRule seldom bears out a rule whose true value lies on the edge of what counts", () => {
  expect(judgedRightly("edge", "borne out")).toBeLessThanOrEqual(0.1);
});

test("judgeRule finds too little evidence in 30 tokens of one speaker, whatever they show", () => {
  const random = seededRandom(7);
  for (const rule of rules)
    for (const truth of ["satisfies", "breaks"] as const) {
      const { verdict } = judgeSimulated(rule, truth, thirtyTokens(rule), random);
      expect(verdict, rule.id).toBe("too little evidence");
    }
});
