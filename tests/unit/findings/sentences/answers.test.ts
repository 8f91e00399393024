import { describe, expect, test } from "vitest";
import { answerRates, answerRatios } from "../../../../src/findings/sentences/answers.ts";
import { rateRow, ratioRow, side } from "../rows.ts";

const spaces = (text: string) => text.replaceAll("\u00a0", " ");
const vowel = (phone: string, changes = {}) => rateRow({ by: { phone }, ...changes });

describe("answerRates", () => {
  test("gives each vowel's rate and counts them all", () => {
    expect(spaces(answerRates("Before a pause", [vowel("i"), vowel("u")]))).toBe(
      "Before a pause, 12 speakers devoice i in 80 % of cases (95 % interval 70 to 90 %) and ɯ (u) in 80 % of cases (70 to 90 %). Counted on 200 vowels.",
    );
  });

  test("of a vowel met fewer than ten times tells only that", () => {
    const sentence = spaces(answerRates("Before a pause", [vowel("i", { tokens: 1 }), vowel("u")]));
    expect(sentence).toBe(
      "Before a pause, 12 speakers devoice ɯ (u) in 80 % of cases (95 % interval 70 to 90 %). Counted on 100 vowels. Too few for a rate: 1 vowel of i.",
    );
    expect(
      spaces(answerRates("Before a pause", [vowel("i", { tokens: 1 }), vowel("u", { tokens: 9 })])),
    ).toBe("Before a pause, there are too few vowels for a rate: 1 vowel of i and 9 vowels of ɯ (u).");
  });
});

describe("answerRatios", () => {
  test("gives no ratio that rests on a handful of sounds, also where it is the only one", () => {
    const few = ratioRow({ by: { phone: "k" }, contrast: "gemination", long: { ...side, tokens: 2 } });
    const sentence = spaces(answerRatios([few]));
    expect(sentence).toContain("too few to say");
    expect(sentence).not.toMatch(/times|interval/);
    expect(spaces(answerRatios([ratioRow({ by: { phone: "i" } })]))).toContain("2.40 times");
  });
});
