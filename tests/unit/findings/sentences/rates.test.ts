import { describe, expect, test } from "vitest";
import {
  compareRates,
  rateBasis,
  rateSentence,
  ruleCount,
  speakerRatesSentence,
} from "../../../../src/findings/sentences/rates.ts";
import { rateRow, ruleRow } from "../rows.ts";

const vowels = { words: "the vowels i and ɯ (u)", plural: true };
const spaces = (text: string) => text.replaceAll("\u00a0", " ");

describe("rateSentence", () => {
  test("gives the rate, its interval, and on how much it rests", () => {
    expect(spaces(rateSentence(vowels, rateRow()))).toBe(
      "The vowels i and ɯ (u) are devoiced in 80 % of 100 cases (95 % interval 70 to 90 %; 12 speakers).",
    );
  });

  test("of one speaker speaks of this speaker only", () => {
    const sentence = rateSentence(vowels, rateRow({ scope: "one speaker", speakers: 1 }));
    expect(sentence).toMatch(/^This one speaker devoices/);
    expect(sentence).toContain("for this speaker only");
  });

  test("of marks written by a rule gives counts, never a share or an interval", () => {
    const sentence = rateSentence(vowels, ruleRow());
    expect(sentence).toContain("expects 80 of 100 cases");
    expect(sentence).toContain("predicted by rule, not a rate");
    expect(sentence).not.toMatch(/%|interval/);
  });
});

describe("compareRates", () => {
  const named = (name: string, estimate: number, low: number, high: number, changes = {}) => ({
    name,
    row: rateRow({ estimate, low, high, ...changes }),
  });

  test("says which of two is higher only where their intervals stay apart", () => {
    expect(compareRates([named("i", 0.8, 0.7, 0.9), named("e", 0.1, 0.05, 0.2)], vowels)).toMatch(
      /^Devoicing is more frequent for i \(80\s%\) than for e \(10\s%\)\.$/,
    );
  });

  test("of overlapping intervals says that the order is open, not that there is no difference", () => {
    const sentence = compareRates([named("i", 0.8, 0.6, 0.9), named("u", 0.7, 0.5, 0.85)], vowels);
    expect(sentence).toMatch(/overlap: from these alone the order is not certain\.$/);
    expect(sentence).not.toMatch(/no (clear )?difference/i);
  });

  test("judges by the interval of the difference where it is known, wide enough for any pair", () => {
    const rows = [named("i", 0.8, 0.6, 0.9), named("u", 0.7, 0.5, 0.85), named("o", 0.5, 0.3, 0.7)];
    const levels: number[] = [];
    const by =
      (low: number) => (a: { estimate: number | null }, b: { estimate: number | null }, level: number) => {
        levels.push(level);
        return { difference: a.estimate! - b.estimate!, low, high: 0.5 };
      };
    const sure = compareRates(rows, vowels, by(0.1));
    expect(spaces(sure)).toMatch(
      /^Devoicing is more frequent for i .* than for o .*, the highest and the lowest here, a difference of 30 points \(95 % interval 10 to 50, /,
    );
    const open = compareRates(rows, vowels, by(-0.1));
    expect(spaces(open)).toMatch(
      /ranges from 50 % for o to 80 % for i, .* −10 to 50, .*allows for no difference/,
    );
    expect(levels[0]).toBeCloseTo(1 - 0.05 / 3, 12);
    expect(compareRates(rows.slice(0, 2), vowels, by(-0.1))).not.toContain("any two");
  });

  test("does not rank what rests on fewer than ten vowels", () => {
    const thin = named("e", 0, 0, 0.02, { tokens: 9 });
    const sentence = compareRates([named("i", 0.8, 0.7, 0.9), named("u", 0.3, 0.2, 0.4), thin], vowels);
    expect(sentence).not.toContain("e (");
    expect(compareRates([thin, thin], vowels)).toContain("too few to rank");
  });

  test("does not call one speaker's sound a finding about the several speakers of the rest", () => {
    const alone = named("o", 0.01, 0, 0.02, { scope: "one speaker", speakers: 1 });
    const sentence = compareRates([named("i", 0.8, 0.7, 0.9), named("u", 0.3, 0.2, 0.4), alone], vowels);
    expect(sentence).toMatch(/than for u \([^)]*\)\.$/);
    expect(sentence).not.toContain("one speaker");
  });

  test("of one speaker alone begins with that", () => {
    const one = { scope: "one speaker", speakers: 1 };
    expect(compareRates([named("i", 0.8, 0.7, 0.9, one), named("u", 0.3, 0.2, 0.4, one)], vowels)).toMatch(
      /^In this one speaker, devoicing/,
    );
  });

  test("of marks written by a rule names no rate", () => {
    const sentence = compareRates(
      [
        { name: "i", row: ruleRow() },
        { name: "u", row: ruleRow() },
      ],
      vowels,
    );
    expect(sentence).toContain("160 of 200 cases");
    expect(sentence).not.toContain("%");
  });

  test("of nothing says that nothing matches", () => {
    expect(compareRates([], vowels)).toContain("Nothing in this corpus matches");
  });
});

test("ruleCount gives counts and no share", () => {
  expect(ruleCount("i", ruleRow())).toBe("i: the rule marks 80 of 100 vowels.");
});

describe("rateBasis", () => {
  test("says how the marks came about and gives no method where there is no rate", () => {
    expect(rateBasis([{ name: "i", row: rateRow() }])).toEqual({
      counts: "100 vowels, 12 speakers; devoicing marked by a person, or known because the speech was made.",
      method: "Interval: a method.",
      warnings: [],
    });
    expect(rateBasis([{ name: "i", row: ruleRow() }])).toMatchObject({
      method: null,
      counts: expect.stringContaining("by a rule"),
    });
  });

  test("names the rows that a warning holds for, unless it holds for all", () => {
    const few = rateRow({ warnings: ["Few."] });
    expect(
      rateBasis([
        { name: "i", row: few },
        { name: "u", row: rateRow() },
      ]).warnings,
    ).toEqual(["i: Few."]);
    expect(
      rateBasis([
        { name: "i", row: few },
        { name: "u", row: few },
      ]).warnings,
    ).toEqual(["Few."]);
  });
});

test("speakerRatesSentence gives the span of the speakers and the rate over all", () => {
  expect(spaces(speakerRatesSentence([0.9, 0.61, 0.7], rateRow()))).toBe(
    "3 speakers range from 61 to 90 %; over all of them 80 % (95 % interval 70 to 90 %).",
  );
});
