import { describe, expect, test } from "vitest";
import type { TokenRow } from "../../../src/measures/columns.ts";
import { type Correction, Corrections } from "../../../src/measures/corrections.ts";
import * as messages from "../../../src/messages/corrections.ts";

function tokenAt(startMs: number, phone = "i", more: Partial<TokenRow> = {}): TokenRow {
  const kind = phone === "i" || phone === "u" ? "vowel" : "consonant";
  return {
    ...{ dataset: "d", utterance: "u1", labelSet: "s", phone, kind, startMs, endMs: startMs + 50 },
    ...{ devoiced: false, devoicedBasis: "measured", ...more },
  } as TokenRow;
}
const correct = (startMs: number, more: Partial<Correction> = {}): Correction => ({
  ...{ dataset: "d", utterance: "u1", phone: "i", startMs, endMs: startMs + 50, devoiced: true },
  ...{ file: "/home/me/marks.csv", line: 2, ...more },
});
const said = (tokens: readonly TokenRow[]) =>
  tokens.map(({ devoiced, devoicedBasis }) => [devoiced, devoicedBasis]);

describe("Corrections.apply", () => {
  test("puts the person's word in the place of what was measured, and nowhere else", () => {
    const corrections = new Corrections([correct(200)]);
    expect(said(corrections.apply([tokenAt(0), tokenAt(200), tokenAt(200, "u"), tokenAt(200, "k")]))).toEqual(
      [
        [false, "measured"],
        [true, "annotated"],
        [false, "measured"],
        [false, "measured"],
      ],
    );
    expect(corrections.counts).toEqual({
      marks: 1,
      used: 1,
      tokens: 1,
      devoiced: 1,
      voiced: 0,
      cannotTell: 0,
    });
  });

  test("takes away every word where the person could not tell", () => {
    const corrections = new Corrections([correct(200, { devoiced: null })]);
    expect(said(corrections.apply([tokenAt(200)]))).toEqual([[null, null]]);
    expect(corrections.counts.cannotTell).toBe(1);
  });

  test("finds a vowel again whose edges have moved by up to 60 ms, and no farther", () => {
    expect(said(new Corrections([correct(200)]).apply([tokenAt(258)]))).toEqual([[true, "annotated"]]);
    expect(said(new Corrections([correct(200)]).apply([tokenAt(262)]))).toEqual([[false, "measured"]]);
  });

  test("gives each of two like vowels its own correction, the nearest first", () => {
    const corrections = new Corrections([correct(60, { devoiced: null, line: 3 }), correct(0)]);
    expect(said(corrections.apply([tokenAt(10), tokenAt(60)]))).toEqual([
      [true, "annotated"],
      [null, null],
    ]);
  });

  test("corrects every label set of the recording, and counts the mark once", () => {
    const corrections = new Corrections([correct(200)]);
    for (const labelSet of ["s", "aligned"])
      expect(said(corrections.apply([tokenAt(205, "i", { labelSet })]))).toEqual([[true, "annotated"]]);
    expect(corrections.counts).toMatchObject({ used: 1, tokens: 2 });
    expect(corrections.problems(["d"])).toEqual([]);
  });
});

test("Corrections.problems names what did not fit, with file name and line but no folder", () => {
  const corrections = new Corrections([
    correct(200),
    correct(900, { line: 3 }),
    correct(0, { utterance: "gone", line: 4 }),
    correct(0, { dataset: "other", line: 5 }),
    correct(210, { line: 6 }),
  ]);
  corrections.apply([tokenAt(200)]);
  const problems = corrections.problems(["d"]);
  expect(problems.map(({ line, rule, message }) => [line, rule, message])).toEqual([
    [3, "correction-stale", messages.correctionStale("i", 900).message],
    [4, "correction-utterance-unknown", messages.correctionOfNoUtterance("gone").message],
    [5, "correction-dataset-unknown", messages.correctionOfOtherDataset("other", ["d"]).message],
    [6, "correction-stale", messages.correctionStale("i", 210).message],
  ]);
  expect(problems.every(({ file, excluded }) => file === "marks.csv" && !excluded)).toBe(true);
});
