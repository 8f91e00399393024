import { describe, expect, test } from "vitest";
import { environmentsSentence } from "../../../../src/findings/sentences/environments.ts";
import { rateRow, ruleRow } from "../rows.ts";

const at = (before: string, after: string, estimate: number, halfWidth = 0.05) => ({
  before,
  after,
  row: rateRow({ estimate, low: estimate - halfWidth, high: estimate + halfWidth }),
});

describe("environmentsSentence", () => {
  test("names the extremes among surroundings with narrow intervals", () => {
    const sentence = environmentsSentence([at("sh", "t", 0.92), at("k", "s", 0.4), at("p", "p", 0.02, 0.4)]);
    expect(sentence).toContain("most frequent between ɕ (sh) and t");
    expect(sentence).toContain("least between k and s");
  });

  test("leaves voiced surroundings out of the ranking", () => {
    expect(
      environmentsSentence([at("k", "t", 0.9), at("s", "t", 0.6), at("k", "voiced", 0.0)]),
    ).not.toContain("voiced sound");
  });

  test("says so where the extremes' intervals overlap, or none is narrow enough", () => {
    expect(environmentsSentence([at("k", "t", 0.6), at("s", "t", 0.58)])).toContain("order is not certain");
    expect(environmentsSentence([at("k", "t", 0.6, 0.3), at("s", "t", 0.2, 0.3)])).toContain(
      "too wide to rank",
    );
  });

  test("of predicted marks speaks of the rule, and of nothing says that there is nothing", () => {
    expect(environmentsSentence([{ before: "k", after: "t", row: ruleRow() }])).toContain(
      "predicted by rule, not heard",
    );
    expect(environmentsSentence([])).toContain("No vowel");
  });
});
