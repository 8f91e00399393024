import { expect, test } from "vitest";
import { correctedRate } from "../../../src/estimates/correctedRate.ts";
import { knownDecisionError } from "../../../src/estimates/knownError.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import {
  errorOfSynthetic,
  errorOfThisCorpus,
  marksErrToo,
  nothingJudgedTwice,
  tooFewKind,
} from "../../../src/messages/explain.ts";
import { wilsonInterval } from "../../../src/statistics/wilsonInterval.ts";
import { notFinite } from "./explain/inventVowels.ts";

/** `counts` of vowels by truth and decision, spread evenly over the speakers. */
function judged(counts: Readonly<Record<"hit" | "miss" | "right" | "alarm", number>>, speakers = 1) {
  const kinds = {
    hit: { devoiced: true, devoicedHeard: true, devoicedProbability: 0.95 },
    miss: { devoiced: true, devoicedHeard: false, devoicedProbability: 0.35 },
    right: { devoiced: false, devoicedHeard: false, devoicedProbability: 0.02 },
    alarm: { devoiced: false, devoicedHeard: true, devoicedProbability: 0.65 },
  };
  return Object.entries(counts).flatMap(([kind, count]) =>
    Array.from({ length: count }, (_, i) => ({
      ...{
        dataset: "d",
        labelSet: "l",
        speaker: `s${i % speakers}`,
        kind: "vowel",
        phone: "i",
        length: "short",
      },
      ...{ before: "k", after: "t", devoicedBasis: "annotated" },
      ...kinds[kind as keyof typeof kinds],
    })),
  );
}

const error = (rows: readonly Readonly<Record<string, unknown>>[], synthetic: string[] = []) =>
  knownDecisionError(tokenTableOfRows(rows), { synthetic });

// Newcombe R. G. (1998) Stat. Med. 17:857–872, Table I: 81 of 263, Wilson .2553 to .3662.
test("knownDecisionError of one speaker is the share judged rightly with Wilson's interval", () => {
  const [got] = error(judged({ hit: 81, miss: 182, right: 90, alarm: 10 }));
  expect(got!.sensitivity).toMatchObject({ correct: 81, of: 263 });
  expect(got!.sensitivity!.low).toBeCloseTo(0.2552885, 7);
  expect(got!.sensitivity!.high).toBeCloseTo(0.3662096, 7);
  expect(got!.specificity!.estimate).toBeCloseTo(0.9, 12);
});

test("knownDecisionError's cut-offs and calibration count the stated probabilities", () => {
  const [got] = error(judged({ hit: 60, miss: 40, right: 170, alarm: 30 }, 10));
  expect(got!.cutOffs).toEqual([
    { probability: 0.2, sensitivity: 1, specificity: 0.85 },
    { probability: 0.35, sensitivity: 1, specificity: 0.85 },
    { probability: 0.5, sensitivity: 0.6, specificity: 0.85 },
    { probability: 0.65, sensitivity: 0.6, specificity: 0.85 },
    { probability: 0.8, sensitivity: 0.6, specificity: 1 },
  ]);
  expect(got!.calibration.map(({ from, tokens, found }) => [from, tokens, found])).toEqual([
    [0, 170, 0],
    [0.3, 40, 1],
    [0.6, 30, 0],
    [0.9, 60, 1],
  ]);
  expect(got!.calibration[1]!.stated).toBeCloseTo(0.35, 12);
});

test("knownDecisionError's accuracy carries the clustering into the corrected rate", () => {
  // One of ten speakers is judged much worse: tokens of a speaker are alike.
  const rows = [
    ...judged({ hit: 90, miss: 10, right: 190, alarm: 10 }, 9),
    ...judged({ hit: 5, miss: 15, right: 20, alarm: 5 }).map((row) => ({ ...row, speaker: "other" })),
  ];
  const [got] = error(rows);
  const { sensitivity, accuracy } = got!;
  expect(accuracy!.sensitivity.of).toBeLessThan(sensitivity!.of / 2);
  expect(accuracy!.sensitivity.correct / accuracy!.sensitivity.of).toBeCloseTo(sensitivity!.estimate, 12);
  const wilson = wilsonInterval(accuracy!.sensitivity.correct, accuracy!.sensitivity.of);
  expect(wilson.high - wilson.low).toBeCloseTo(sensitivity!.high - sensitivity!.low, 9);
  const rate = { estimate: 0.5, low: 0.45, high: 0.55 };
  const plain = correctedRate(
    rate,
    { sensitivity: { correct: 95, of: 120 }, specificity: { correct: 210, of: 225 } },
    0.95,
  )!;
  const honest = correctedRate(rate, accuracy!, 0.95)!;
  expect(honest.estimate).toBeCloseTo(plain.estimate, 12);
  expect(honest.high - honest.low).toBeGreaterThan(plain.high - plain.low);
});

test("knownDecisionError tells vowels where devoicing may happen from all vowels", () => {
  const others = judged({ hit: 0, miss: 0, right: 50, alarm: 0 }).map((row) => ({ ...row, phone: "a" }));
  const [all, devoiceable] = error([...judged({ hit: 20, miss: 0, right: 10, alarm: 10 }), ...others]);
  expect([all!.vowels, devoiceable!.vowels]).toEqual(["all vowels", "devoiceable vowels"]);
  expect(all!.specificity).toMatchObject({ correct: 60, of: 70 });
  expect(devoiceable!.specificity).toMatchObject({ correct: 10, of: 20 });
});

test("knownDecisionError of synthetic speech says that it is no accuracy on recorded speech", () => {
  const rows = judged({ hit: 20, miss: 2, right: 20, alarm: 2 });
  expect(error(rows, ["d"])[0]!.warnings).toContain(errorOfSynthetic("d"));
  expect(error(rows)[0]!.warnings).toEqual(expect.arrayContaining([errorOfThisCorpus("d"), marksErrToo()]));
});

test.each([
  ["marks by rule", { devoicedBasis: "predicted" }],
  ["measured marks only", { devoicedBasis: "measured" }],
  ["labels without recordings", { devoicedHeard: null }],
])("knownDecisionError of %s has nothing to compare and says so", (_, change) => {
  const got = error(judged({ hit: 9, miss: 1, right: 9, alarm: 1 }).map((row) => ({ ...row, ...change })));
  expect(got.map(({ reason, accuracy }) => [reason, accuracy])).toEqual([
    [nothingJudgedTwice(), null],
    [nothingJudgedTwice(), null],
  ]);
});

test("knownDecisionError of one kind, or without probabilities, gives nulls, never NaN", () => {
  const voiced = error(judged({ hit: 0, miss: 0, right: 30, alarm: 0 }, 3));
  expect(voiced[0]).toMatchObject({ sensitivity: null, accuracy: null });
  expect(voiced[0]!.warnings).toContain(tooFewKind("devoiced"));
  const silent = error(
    judged({ hit: 9, miss: 1, right: 9, alarm: 1 }, 3).map((row) => ({
      ...row,
      devoicedProbability: Number.NaN,
    })),
  );
  expect(silent[0]!.cutOffs[0]).toEqual({ probability: 0.2, sensitivity: null, specificity: null });
  expect(notFinite([voiced, silent, error([])])).toEqual([]);
});
