import { describe, expect, test } from "vitest";
import {
  compareRatios,
  durationsSentence,
  isFirm,
  ratioBasis,
  ratioSentence,
  speakerRatiosSentence,
} from "../../../../src/findings/sentences/ratios.ts";
import { ratioRow, side } from "../rows.ts";

const spaces = (text: string) => text.replaceAll("\u00a0", " ");

describe("ratioSentence", () => {
  test("gives ratio, interval, speakers and tokens of both sides", () => {
    expect(spaces(ratioSentence(ratioRow()))).toBe(
      "Long vowels last 2.40 times as long as short ones (95 % interval 2.20 to 2.60, 12 speakers; 50 tokens against 50 tokens).",
    );
  });

  test("calls a lower bound “at least”", () => {
    expect(ratioSentence(ratioRow({ bound: "at least" }))).toContain("at least 2.40 times");
  });

  test("of one speaker speaks of this speaker only", () => {
    const sentence = ratioSentence(ratioRow({ scope: "one speaker", speakers: 1 }));
    expect(sentence).toMatch(/^In this one speaker, long vowels/);
    expect(sentence).toContain("for this speaker only");
  });

  test("gives the reason where there is no ratio", () => {
    const none = ratioRow({ estimate: null, low: null, high: null, warnings: ["No speaker has both."] });
    expect(ratioSentence(none)).toBe(
      "Of long vowels and short ones no ratio can be given here. No speaker has both.",
    );
  });
});

describe("compareRatios", () => {
  const named = (name: string, estimate: number, changes = {}) => ({
    name,
    row: ratioRow({ estimate, low: estimate - 0.1, high: estimate + 0.1, ...changes }),
  });

  test("gives the span, and no doubt where the intervals stay apart", () => {
    expect(compareRatios([named("i", 2.7), named("e", 2.2)])).toBe(
      "Long vowels last from 2.20 times (e; 95\u00a0% interval 2.10 to 2.30) to 2.70 times (i; 95\u00a0% interval 2.60 to 2.80) as long as short ones.",
    );
  });

  test("says where intervals overlap or lower bounds leave the order open", () => {
    expect(compareRatios([named("i", 2.3), named("e", 2.2)])).toContain("their order is not certain");
    expect(compareRatios([named("i", 2.7), named("e", 2.2, { bound: "at least" })])).toContain(
      "at least 2.20 times (e;",
    );
    expect(compareRatios([named("i", 2.7), named("e", 2.2, { bound: "at least" })])).toContain(
      "order is not certain",
    );
  });

  test("does not rank a sound with one long token", () => {
    const thin = named("b", 8.6, { long: { ...side, tokens: 1 } });
    expect(isFirm(thin.row)).toBe(false);
    expect(compareRatios([named("i", 2.7), named("e", 2.2), thin])).not.toContain("8.6");
    expect(compareRatios([thin, thin])).toContain("too few");
  });

  test("does not let a sound of one speaker speak for several", () => {
    const alone = named("d", 3.2, { scope: "one speaker", speakers: 1 });
    const sentence = compareRatios([named("t", 2.3), named("s", 1.9), alone]);
    expect(sentence).not.toContain("one speaker");
    expect(sentence).not.toContain("3.20");
  });
});

test("ratioBasis counts both sides and says how the boundaries came about", () => {
  expect(
    ratioBasis([
      { name: "a", row: ratioRow() },
      { name: "i", row: ratioRow({ speakers: 3 }) },
    ]).counts,
  ).toBe(
    "100 tokens of long vowels, 100 tokens of short ones, 12 speakers; boundaries placed by an aligner.",
  );
});

test("durationsSentence says “at most” where short sounds stand at the floor", () => {
  expect(spaces(durationsSentence(ratioRow()))).toBe(
    "Geometric means: 132 ms for long vowels, 55 ms for short ones.",
  );
  expect(spaces(durationsSentence(ratioRow({ short: { ...side, atFloorShare: 0.2 } })))).toContain(
    "at most 55 ms",
  );
});

test("speakerRatiosSentence keeps a bound a bound", () => {
  expect(speakerRatiosSentence([2.1, 2.6], ratioRow({ bound: "at least" }))).toMatch(
    /^2 speakers range from at least 2\.10 to 2\.60 times; over all of them at least 2\.40/,
  );
});
