import { expect, test } from "vitest";
import {
  boundsText,
  holdsText,
  intervalText,
  numberText,
  partText,
  sourceSentence,
} from "../../../../src/findings/rules/verdictSentence.ts";

test("numberText says shares in per cent, differences in points, ratios in times", () => {
  expect(numberText(0.923, "share")).toBe("92.3 %");
  expect(numberText(-0.05, "difference")).toBe("−5.0 points");
  expect(numberText(-0.0004, "difference")).toBe("0.0 points");
  expect(numberText(-42.2, "hertz")).toBe("−42 Hz");
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
    "less (down to −5.0 points would be too small to matter)",
  );
});

test("intervalText says an interval with its level, and boundsText an open side as such", () => {
  const judged = { low: 0.768, high: 0.92, scale: "share" } as const;
  expect(intervalText({ ...judged, level: 0.95 })).toBe("95 % interval 76.8 to 92.0 %");
  expect(intervalText({ low: 1.86, high: null, scale: "ratio", level: 0.9 })).toBe(
    "90 % interval: 1.86 times or more",
  );
  expect(boundsText(judged)).toBe("76.8 to 92.0 %");
  expect(boundsText({ low: 0, high: 1.1, scale: "ratio" })).toBe("1.10 times or less");
  expect(boundsText({ low: null, high: 1.1, scale: "ratio" })).toBe("1.10 times or less");
  expect(boundsText({ low: -0.5, high: -0.422, scale: "difference" })).toBe("−50.0 to −42.2 points");
  expect(boundsText({ low: 0, high: 0.1, scale: "share" })).toBe("0.0 to 10.0 %");
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
