import { expect, test } from "vitest";
import { consonantColouring } from "../../../src/estimates/colouring.ts";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import {
  noColouringEvidence,
  noFrication,
  noSpectrumOf,
  tooFewColoured,
} from "../../../src/messages/explain.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { notFinite } from "./explain/inventVowels.ts";

/** /sh/ + vowel, the fricative brighter by `differenceHz` before /i/; speakers and words differ. */
function invent(differenceHz: number, { pairs = 1200, speakers = 15, words = 60, seed = 4 } = {}) {
  const random = seededRandom(seed);
  const ofSpeaker = Array.from({ length: speakers }, () => 300 * random.normal());
  const ofWord = Array.from({ length: words }, () => 80 * random.normal());
  return Array.from({ length: pairs }, (_, i) => {
    const [speaker, word] = [i % speakers, random.below(words)];
    const phone = word % 2 === 0 ? "i" : "u";
    const devoiced = random.uniform() < 0.5;
    const shared = {
      dataset: "d",
      labelSet: "l",
      speaker: `s${speaker}`,
      utterance: `u${i}`,
      word: `w${word}`,
    };
    const centre = 4500 + (phone === "i" ? differenceHz : 0) + ofSpeaker[speaker]! + ofWord[word]!;
    return [
      {
        ...shared,
        index: 1,
        kind: "consonant",
        phone: "sh",
        fricationCentreHz: centre + 200 * random.normal(),
      },
      {
        ...{ ...shared, index: 2, kind: "vowel", phone, length: "short", before: "sh", after: "k" },
        ...{ devoiced, devoicedBasis: "measured" },
      },
    ];
  }).flat();
}

const colouring = (rows: readonly Readonly<Record<string, unknown>>[]) =>
  consonantColouring(tokenTableOfRows(rows), { level: 0.999 });

test("consonantColouring finds the invented difference, speakers and words varying", () => {
  for (const differenceHz of [0, 250]) {
    const [devoiced, voiced, k] = colouring(invent(differenceHz));
    for (const got of [devoiced!, voiced!]) {
      expect(got).toMatchObject({
        consonant: "sh",
        basis: "measured",
        reason: null,
        speakers: 15,
        words: 60,
      });
      for (const bounds of [got.difference!, got.difference!.mixed!]) {
        expect(bounds.low!).toBeLessThan(differenceHz);
        expect(bounds.high!).toBeGreaterThan(differenceHz);
        expect(bounds.high! - bounds.low!).toBeLessThan(300);
      }
    }
    expect(devoiced!.tokens + voiced!.tokens).toBe(1200);
    expect(k!.reason).toBe(noSpectrumOf("k"));
  }
});

test("consonantColouring takes the release of k where sh has its frication", () => {
  const rows = invent(300).map((row) =>
    "fricationCentreHz" in row
      ? { ...row, phone: "k", fricationCentreHz: null, releaseCentreHz: row.fricationCentreHz }
      : { ...row, before: "k" },
  );
  const [sh, , k] = colouring(rows);
  expect(sh!.difference).toBeNull();
  expect(k!.difference).toEqual(colouring(invent(300))[0]!.difference);
});

test("consonantColouring compares speakers with themselves: who said more /i/ does not matter", () => {
  const rows = invent(100, { pairs: 900 });
  // A bright voice that says /i/ only.
  const bright = invent(100, { pairs: 300, seed: 9 }).map((row) => ({
    ...{ ...row, speaker: "bright" },
    ...("fricationCentreHz" in row ? { fricationCentreHz: 8000 } : { phone: "i" }),
  }));
  const [before, after] = [rows, [...rows, ...bright]].map((all) => colouring(all)[0]!.difference!.estimate);
  expect(after).toBeCloseTo(before!, 6);
});

test.each([
  ["no spectra", { fricationCentreHz: null }, noFrication()],
  ["marks by rule", { devoicedBasis: "predicted" }, noColouringEvidence()],
])("consonantColouring of %s states the reason", (_, change, reason) => {
  expect(colouring(invent(0).map((row) => ({ ...row, ...change })))[0]).toMatchObject({
    reason,
    difference: null,
  });
});

test("consonantColouring of few tokens, one speaker or one word gives numbers or reasons, never NaN", () => {
  const rows = invent(100);
  expect(colouring(rows.slice(0, 8))[0]!.reason).toMatch(/where 5 of each are needed/);
  expect(colouring(invent(100, { words: 1 }))[0]!.reason).toBe(
    tooFewColoured(colouring(invent(100, { words: 1 }))[0]!.tokens, 0, 5),
  );
  const alone = colouring(rows.map((row) => ({ ...row, speaker: "s" })));
  expect(alone[0]!.reason).toBeNull();
  const same = colouring(
    rows.map((row) => ("fricationCentreHz" in row ? { ...row, fricationCentreHz: 5000 } : row)),
  );
  expect(same[0]!.difference).toBeNull();
  expect(same[0]!.reason).toMatch(/All values are equal/);
  for (const got of [alone, same, colouring(rows.map((row) => ({ ...row, word: null })))])
    expect(notFinite(got)).toEqual([]);
  expect(colouring([])).toEqual([]);
});
