import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { lengthEvidence } from "../../../../src/findings/words/lengthEvidence.ts";
import { ratioText } from "../../../../src/findings/words/reasons.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";

const tokens = Array.from({ length: 200 }, (_, i) => ({
  ...plainToken,
  phone: i % 2 === 0 ? "i" : "a",
  length: i % 4 < 2 ? "long" : "short",
  devoiced: i % 2 === 0 && i % 12 === 2,
  durationMs: (i % 4 < 2 ? 140 : 60) + (i % 7),
}));

test("lengthEvidence tells the share of short vowels that are devoiced and counted too, and its text says so", () => {
  const { vowels } = lengthEvidence(cellsFromTokens(tokens), "d1", "full");
  const short = tokens.filter(({ phone, length }) => phone === "i" && length === "short");
  const share = short.filter(({ devoiced }) => devoiced).length / short.length;
  expect(vowels.i!.devoicedShare).toBeCloseTo(share, 12);
  expect(vowels.a!.devoicedShare).toBeNull();
  expect(ratioText(vowels.i!)).toContain(
    `${Math.round(100 * share)} % of the short ones whispered and counted too`,
  );
  expect(ratioText(vowels.a!)).not.toContain("whispered");
});
