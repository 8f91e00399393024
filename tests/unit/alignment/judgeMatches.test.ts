import { expect, test } from "vitest";
import { judgeMatches } from "../../../src/alignment/judgeMatches.ts";
import type { MatchScore } from "../../../src/alignment/matchScore.ts";

const match = (gap: number, worstGap: number): MatchScore => ({
  gap,
  worst: { startMs: 0, endMs: 300, gap: worstGap },
});
const good = Array.from({ length: 40 }, (_, i) => match(3 + (i % 5) * 0.1, 8 + (i % 7) * 0.2));

test("judgeMatches sets aside a text that fits far worse, and one with a bad stretch, and nobody else", () => {
  const verdicts = judgeMatches([...good, match(9, 20), match(3.3, 25)]);
  expect(verdicts.slice(0, 40).map(({ mismatch }) => mismatch)).toEqual(new Array(40).fill(null));
  expect(verdicts[40]!.mismatch).toBe("text");
  expect(verdicts[41]!.mismatch).toBe("stretch");
});

test("judgeMatches holds when a third of the texts are wrong", () => {
  const wrong = Array.from({ length: 20 }, (_, i) => match(9 + i / 10, 20));
  const verdicts = judgeMatches([...good, ...wrong]);
  expect(verdicts.filter(({ mismatch }) => mismatch !== null)).toHaveLength(20);
  expect(verdicts.slice(0, 40).every(({ mismatch }) => mismatch === null)).toBe(true);
});

test("judgeMatches of equal scores finds nothing wrong, of none gives nothing", () => {
  expect(judgeMatches([match(1, 1), match(1, 1)]).map(({ mismatch }) => mismatch)).toEqual([null, null]);
  expect(judgeMatches([])).toEqual([]);
});
