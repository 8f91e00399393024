import { expect, test } from "vitest";
import { labelledIntervals } from "../../../src/alignment/labelledIntervals.ts";
import type { LabelSetCard } from "../../../src/datasets/types.ts";
import { readUtterance } from "../../../src/phonology/readUtterance.ts";

test("labelledIntervals(pauses alone, a reading) says that the reading does not fit", () => {
  const set = { format: "start-end-phone", lengthFrom: "label", devoicingBasis: null } as LabelSetCard;
  const { reading } = readUtterance({ text: null, reading: "カ", accentReading: null }, null);
  const { readingFits, problems } = labelledIntervals("0.0 0.4 sil\n", set, reading);
  expect(readingFits).toBe(false);
  expect(problems.map(({ line, fatal }) => [line, fatal])).toEqual([[1, false]]);
});
