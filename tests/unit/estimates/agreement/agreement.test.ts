import { describe, expect, test } from "vitest";
import { createAgreement } from "../../../../src/estimates/agreement/agreement.ts";
import type { ComparedUtterance } from "../../../../src/estimates/agreement/comparedUtterance.ts";
import { labels, own, utterance } from "./spoken.ts";

function agreementOf(marks: "annotated" | "predicted" | null, ...utterances: readonly ComparedUtterance[]) {
  const agreement = createAgreement({ times: "annotated", marks });
  for (const one of utterances) agreement.add(one);
  return agreement.result();
}

describe("boundaries", () => {
  test("shares, median, mean and bias are those counted by hand", () => {
    // Boundaries off by 0, 10, −20 and 60 ms.
    const mine = own("k 100", "a 110", "s 70", "a 180", "t 50");
    const theirs = labels(false, "k 100", "a 100", "s 100", "a 100", "t 50");
    const { boundaries } = agreementOf(null, utterance(mine, theirs));
    expect(boundaries).toMatchObject({ n: 4, medianMs: 15, meanMs: 22.5, biasMs: 5, basis: "annotated" });
    expect([boundaries.within10, boundaries.within20, boundaries.within50]).toEqual([0.5, 0.75, 0.75]);
    expect(boundaries.byClass["obstruent to vowel"]).toMatchObject({ n: 2, medianMs: 10 });
    expect(boundaries.byClass["vowel to obstruent"]).toMatchObject({ n: 2, medianMs: 35 });
  });

  test("classes add up to all boundaries, a pause wins over a devoiced vowel", () => {
    const mine = own("pause 50", "d 50", "e 80", "s 90", "u 50 short d", "pause 90");
    const theirs = labels(true, "pause 50", "d 50", "e 80", "s 90", "U 50", "pause 90");
    const { byClass, n } = agreementOf("annotated", utterance(mine, theirs)).boundaries;
    expect(Object.values(byClass).reduce((sum, of) => sum + of.n, 0)).toBe(n);
    expect(Object.keys(byClass)).toEqual([
      ...["vowel to obstruent", "obstruent to vowel", "into a devoiced vowel"],
      ...["into a pause", "out of a pause"],
    ]);
  });

  test("without marks the class goes by the measured decision", () => {
    const mine = own("s 90", "u 50 short d", "k 50", "i 60");
    const theirs = labels(false, "s 90", "u 50", "k 50", "i 60");
    const { byClass } = agreementOf(null, utterance(mine, theirs)).boundaries;
    expect(Object.keys(byClass)).toContain("into a devoiced vowel");
  });

  test("no boundary gives null, not zero", () => {
    const { boundaries } = agreementOf(null);
    expect(boundaries).toMatchObject({ n: 0, medianMs: null, within20: null, byClass: {} });
  });

  test("boundaries that never differ are told of as the same labels from 20 on, and not beside a pause of one side alone", () => {
    const sounds = (pairs: number) => Array.from({ length: pairs }, () => ["k 50", "a 90"]).flat();
    const same = (mine: readonly string[], theirs = mine) =>
      agreementOf(null, utterance(own(...mine), labels(false, ...theirs))).boundaries;
    expect(same(["k 50", "a 90"])).toMatchObject({ n: 1, sameTimes: false });
    expect(same(sounds(10))).toMatchObject({ n: 19, sameTimes: false });
    expect(same([...sounds(10), "k 50"])).toMatchObject({ n: 20, sameTimes: true });
    const paused = [...sounds(15), "pause 60", ...sounds(15)];
    expect(same(paused).sameTimes).toBe(true);
    const closed = [...sounds(14), "k 50", "a 150", ...sounds(15)];
    const { boundaries, pauses } = agreementOf(null, utterance(own(...paused), labels(false, ...closed)));
    expect(pauses.onlyOwn).toBe(1);
    expect(boundaries.sameTimes).toBe(false);
  });

  test("a recording whose labels are of another text is set aside and named", () => {
    const mine = own("k 50", "a 90", "s 50", "a 90");
    const other = labels(false, "m 50", "i 90", "n 50", "o 90");
    const { utterances, boundaries } = agreementOf(null, utterance(mine, other, "swapped"));
    expect(utterances).toEqual({ compared: 0, differ: ["swapped"] });
    expect(boundaries.n).toBe(0);
  });
});

describe("devoicing", () => {
  /** k i k: heard and marked devoiced or not, so often. */
  const vowels = (heard: boolean, marked: boolean, times: number) =>
    Array.from({ length: times }, () =>
      utterance(
        own("k 50", `i 50 short ${heard ? "d" : "v"}`, "k 50"),
        labels(true, "k 50", `${marked ? "I" : "i"} 50`, "k 50"),
      ),
    );

  test("accuracy, F1 and kappa are those of a table worked by hand", () => {
    // 20 both devoiced, 5 only heard, 10 only marked, 15 neither: accuracy 35/50, F1 40/55, chance 0.5, kappa 0.4.
    const table = [...vowels(true, true, 20), ...vowels(true, false, 5)];
    const { devoicing } = agreementOf(
      "annotated",
      ...table,
      ...vowels(false, true, 10),
      ...vowels(false, false, 15),
    );
    expect(devoicing).toMatchObject({ n: 50, accuracy: 0.7, basis: "annotated" });
    expect(devoicing.f1).toBeCloseTo(40 / 55, 12);
    expect(devoicing.kappa).toBeCloseTo(0.4, 12);
    expect(devoicing.byPlace.expected.n).toBe(50);
    expect(devoicing.byPlace.elsewhere).toMatchObject({ n: 0, accuracy: null, kappa: null });
  });

  test("predicted marks keep their basis; without marks there is none", () => {
    expect(agreementOf("predicted", ...vowels(true, true, 2)).devoicing.basis).toBe("predicted");
    const unmarked = utterance(own("k 50", "i 50 short d", "k 50"), labels(false, "k 50", "i 50", "k 50"));
    expect(agreementOf(null, unmarked).devoicing).toMatchObject({ n: 0, accuracy: null, basis: null });
  });

  test("long vowels and a, e, o are not among the short /i, u/", () => {
    const mine = own("k 50", "i 150 long", "k 50", "a 80 short", "k 50", "u 50 short");
    const theirs = labels(true, "k 50", "i 150", "k 50", "a 80", "k 50", "u 50");
    const { devoicing } = agreementOf("annotated", utterance(mine, theirs));
    expect([devoicing.n, devoicing.byPlace.aeo.n]).toEqual([1, 1]);
  });
});

test("ratios compare the same sounds: long and short vowels between consonants, geminates and singles", () => {
  const mine = own("k 50", "o 200 long", "k 100 single", "o 100 short", "k 200 geminate", "o 90 short");
  const theirs = labels(false, "k 50", "o 180", "k 80", "o 60", "cl 100", "k 100", "o 90");
  const { ratio } = agreementOf(null, utterance(mine, theirs));
  expect(ratio).toMatchObject({ own: 2, reference: 3, long: 1, short: 1 });
  expect(ratio.errorPercent).toBeCloseTo(-100 / 3, 10);
  expect(ratio.gemination).toMatchObject({ own: 2, reference: 2.5, long: 1, short: 1 });
});
