import { expect, test } from "vitest";
import { clusteredRate } from "../../../../src/estimates/clusteredRate.ts";
import { cutOffSweep } from "../../../../src/estimates/samples/cutOffSweep.ts";
import { probabilityCells } from "../../../../src/estimates/samples/probabilityCells.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const random = seededRandom(3);
const pick = <T>(of: readonly T[]): T => of[random.below(of.length)]!;
const rows = Array.from({ length: 4000 }, (_, index) => ({
  ...{ dataset: "d", labelSet: "l", utterance: "u", index, kind: "vowel", devoicedBasis: "measured" },
  ...{
    speaker: pick(["s1", "s2", "s3"]),
    phone: pick(["i", "u", "a"]),
    length: pick(["short", "short", "long"]),
  },
  ...{
    before: pick(["k", "s", "m"]),
    after: pick(["t", "s", "n", "pause"]),
    position: pick(["initial", "medial"]),
  },
  devoicedProbability: index % 50 === 0 ? null : random.uniform(),
}));
const cells = probabilityCells(
  tokenTableOfRows(rows),
  Uint32Array.from(rows, (_, row) => row),
);

/** The same by looking at every token. */
function bruteForce(cutOff: number, wanted: (row: (typeof rows)[number]) => boolean) {
  const own = rows.filter(
    (row) => row.devoicedProbability !== null && row.length !== "long" && row.before !== "m" && wanted(row),
  );
  const speakers = ["s1", "s2", "s3"].map((speaker) => own.filter((row) => row.speaker === speaker));
  const present = speakers.filter((mine) => mine.length > 0);
  const of = present.map((mine) => mine.length);
  const hits = present.map((mine) => mine.filter((row) => row.devoicedProbability! >= cutOff).length);
  return { ...clusteredRate(of, hits, 0.95), devoiced: hits.reduce((a, b) => a + b, 0), tokens: own.length };
}

test.each([
  { filter: {}, wanted: () => true },
  {
    filter: { phone: "i,u", after: "voiceless" },
    wanted: ({ phone, after }: { phone: string; after: string }) =>
      phone !== "a" && (after === "t" || after === "s"),
  },
  {
    filter: { speaker: "s2", before: "k", position: "medial" },
    wanted: (row: { speaker: string; before: string; position: string }) =>
      row.speaker === "s2" && row.before === "k" && row.position === "medial",
  },
])("cutOffSweep of $filter is that of every single token, at every cut-off", ({ filter, wanted }) => {
  const sweep = cutOffSweep(cells, filter, 0.95)!;
  expect(sweep.rates.map(({ cutOff }) => cutOff)).toEqual(Array.from({ length: 19 }, (_, k) => (k + 1) / 20));
  for (const { cutOff, estimate, low, high, devoiced } of sweep.rates) {
    const expected = bruteForce(cutOff, wanted);
    expect(sweep.tokens).toBe(expected.tokens);
    expect(devoiced).toBe(expected.devoiced);
    expect([estimate, low, high]).toEqual([expected.estimate, expected.low, expected.high]);
  }
});

test("cutOffSweep of nothing is null: no such vowel, no probabilities at all", () => {
  expect(cutOffSweep(cells, { phone: "o" }, 0.95)).toBeNull();
  const none = probabilityCells(
    tokenTableOfRows(rows.map((row) => ({ ...row, devoicedProbability: null }))),
    Uint32Array.from(rows, (_, row) => row),
  );
  expect(none.tokens).toEqual([]);
  expect(cutOffSweep(none, {}, 0.95)).toBeNull();
});

test("probabilityCells counts a probability of 1 in the last step and 0 in the first", () => {
  const two = [0, 1].map((devoicedProbability) => ({
    ...rows[0]!,
    before: "k",
    length: "short",
    devoicedProbability,
  }));
  const { steps, tokens } = probabilityCells(tokenTableOfRows(two), Uint32Array.of(0, 1));
  expect([...steps]).toEqual([0, 19]);
  expect([...tokens]).toEqual([1, 1]);
});
