import { expect, test } from "vitest";
import {
  holdsText,
  numberText,
  partText,
  sourceSentence,
} from "../../../../src/findings/rules/verdictSentence.ts";

test("numberText says shares in per cent, differences in points, ratios in times", () => {
  expect(numberText(0.923, "share")).toBe("92.3 %");
  expect(numberText(-0.05, "difference")).toBe("-5.0 points");
  expect(numberText(2.349, "ratio")).toBe("2.35 times");
});

test("holdsText says what a rule asks for", () => {
  expect(holdsText({ when: "more-than", value: 0.95 }, "share")).toBe("more than 95.0 %");
  expect(holdsText({ when: "between", from: 2.15, to: 2.8 }, "ratio")).toBe("2.15 to 2.80 times");
  expect(holdsText({ when: "about", value: 2, margin: 0.25 }, "ratio")).toBe(
    "about 2.00 times, give or take 25 %",
  );
  expect(holdsText({ when: "more-than", value: 1 }, "ratio")).toBe("longer");
  expect(holdsText({ when: "less-than", value: 0 }, "difference")).toBe("less");
  expect(holdsText({ when: "less-than", value: 0, negligible: 0.05 }, "difference")).toBe(
    "less (down to -5.0 points would be too small to matter)",
  );
});

test("partText says an environment in words", () => {
  expect(partText({ column: "after", value: "h" })).toBe("before /h/");
  expect(partText({ column: "after", value: "cl" })).toBe("before a doubled consonant");
  expect(partText({ column: "before", value: "pause" })).toBe("after a pause");
  expect(partText({ column: "accented", value: "true" })).toBe("on the accent");
  expect(partText({ column: "position", value: "medial" })).toBe(
    "in the medial morae of a stretch between pauses",
  );
});

test("sourceSentence says how far a source was seen", () => {
  expect(sourceSentence("from memory")).toBe("from memory");
  expect(sourceSentence({ citation: "Han 1992", mark: "read" })).toBe(
    "Han 1992 (the work or its abstract was read)",
  );
});
