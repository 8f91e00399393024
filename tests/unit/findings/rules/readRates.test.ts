import { expect, test } from "vitest";
import { type CellToken, cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { readRate, readRateDifference } from "../../../../src/findings/rules/readRates.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

const vowels = (n: number, devoiced: number, more: Partial<CellToken>): CellToken[] =>
  Array.from({ length: n }, (_, i) => ({ ...plainToken, devoiced: i < devoiced, ...more }));
const measured = { devoicedBasis: "measured" } as const;
const corrected = { devoicedBasis: "annotated" } as const;
const speakers = ["s1", "s2", "s3", "s4", "s5"];
const cells = cellsFromTokens(
  speakers.flatMap((speaker) => [
    ...vowels(40, 30, { ...measured, speaker }),
    ...vowels(40, 10, { ...measured, speaker, after: "m" }),
    ...vowels(2, 0, { ...corrected, speaker }),
    ...vowels(1, 1, { ...corrected, speaker, after: "m" }),
  ]),
);
const cut = (after: string) => ({ called: after, where: { vowel: "i", after } });

test("readRate judges the measured vowels alone where some were corrected by a person", () => {
  const readings = readRate({ cells, tokens: null }, { kind: "rate", of: cut("t") }, null, { level: 0.95 });
  expect(readings.map(({ basis, tokens, estimate }) => [basis, tokens, estimate])).toEqual([
    ["measured", [200], 0.75],
  ]);
});

test("readRateDifference does likewise on both sides", () => {
  const contrast = { kind: "rate-difference", first: cut("t"), second: cut("m") } as const;
  const readings = readRateDifference(cells, contrast, null, { level: 0.95 });
  expect(readings.map(({ basis, tokens, sides }) => [basis, tokens, sides])).toEqual([
    ["measured", [200, 200], [0.75, 0.25]],
  ]);
});
