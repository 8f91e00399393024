import { describe, expect, test } from "vitest";
import {
  chanceOf,
  devoicingTable,
  fewAlike,
  leastAlike,
} from "../../../../src/findings/words/devoicingTable.ts";
import { environmentOf } from "../../../../src/findings/words/environment.ts";
import { devoicingEvidence, labelledCorpora } from "../../../helpers/wholeTable.ts";
import { type SimulatedRow, simulateSpeakers, tokenTable } from "./simulateTokens.ts";

const evidenceOf = (rows: readonly SimulatedRow[]) => {
  const table = tokenTable(rows);
  return devoicingEvidence(table, labelledCorpora(table)[0]!);
};
const place = { vowel: "i", long: false, before: "sh", after: "t", accented: false, neighbour: false };

/** Predicted against observed by tenths of the predicted chance. */
function reliability(known: readonly SimulatedRow[], heldOut: readonly SimulatedRow[]) {
  const table = devoicingTable(evidenceOf(known));
  const bins = Array.from({ length: 10 }, () => ({ tokens: 0, observed: 0, predicted: 0 }));
  for (const row of heldOut) {
    const chance = chanceOf(table, { ...row, vowel: row.phone, long: false }).estimate!;
    const bin = bins[Math.min(9, Math.floor(10 * chance))]!;
    bin.tokens++;
    bin.observed += row.devoiced ? 1 : 0;
    bin.predicted += chance;
  }
  return bins.map(({ tokens, observed, predicted }) => ({
    tokens,
    observed: observed / tokens,
    predicted: predicted / tokens,
  }));
}

describe("devoicingTable", () => {
  test("is calibrated on speakers it never met: within 5 points in each tenth that holds 200 tokens", () => {
    // Known truth (simulateTokens.ts). So many speakers that the mean of those drawn does not decide the outcome.
    const known = simulateSpeakers(11, 100, 120, 0.7);
    const bins = reliability(known, simulateSpeakers(12, 300, 60, 0.7));
    const full = bins.filter(({ tokens }) => tokens >= 200);
    expect(full.length).toBeGreaterThanOrEqual(7);
    for (const { observed, predicted } of full) expect(Math.abs(observed - predicted)).toBeLessThan(0.05);
  });

  test("knows that C1 and C2 act together when they do", () => {
    const rows = simulateSpeakers(13, 20, 400, 0.5);
    const table = devoicingTable(evidenceOf(rows));
    expect(table.interaction).toBe(true);
    const chance = (before: string, after: string) => chanceOf(table, { ...place, before, after });
    expect(chance("sh", "t").low!).toBeGreaterThan(chance("sh", "s").high!);
  });

  test("holds intervals that cover the truth of nearly all simulated corpora", () => {
    const environment = { ...place, before: "k" };
    // No spread between speakers: the truth is the logistic of the odds themselves.
    const truth = 1 / (1 + Math.exp(-1.4));
    let covered = 0;
    for (let seed = 1; seed <= 20; seed++) {
      const { low, high } = chanceOf(
        devoicingTable(evidenceOf(simulateSpeakers(seed, 10, 120, 0))),
        environment,
      );
      if (low! <= truth && truth <= high!) covered++;
    }
    expect(covered).toBeGreaterThanOrEqual(17);
  }, 120_000);

  test("takes marks predicted from text for nothing: every chance is unknown", () => {
    const rows = simulateSpeakers(1, 4, 100, 0).map((row) => ({ ...row, basis: "predicted" }));
    const table = devoicingTable(evidenceOf(rows));
    expect(table).toMatchObject({ basis: null, tokens: 0, predicted: 400 });
    expect(new Set(Object.values(table.chances).map(({ how, estimate }) => `${how} ${estimate}`))).toEqual(
      new Set(["unknown null"]),
    );
  });

  test("gives the share of the vowels alike, of this quality, not before a pause and after a like consonant, where a model would be too much", () => {
    const few = simulateSpeakers(3, 3, 19, 0);
    const table = devoicingTable(evidenceOf(few));
    const { how, estimate, low, high } = chanceOf(table, place);
    expect(how).toBe("share");
    const alike = few.filter(
      ({ phone, before, after }) => phone === "i" && after !== "pause" && ["s", "sh"].includes(before),
    );
    expect(alike.length).toBeGreaterThanOrEqual(leastAlike);
    expect(estimate).toBeCloseTo(alike.filter(({ devoiced }) => devoiced).length / alike.length, 12);
    expect(high! - low!).toBeGreaterThan(0.2);
  });

  const row = { ...simulateSpeakers(1, 1, 1, 0)[0]!, speaker: "a", accented: false, neighbour: false };
  const several = (n: number, of: Partial<SimulatedRow>) =>
    Array.from({ length: n }, () => ({ ...row, ...of }));
  const final = { phone: "u", before: "s", after: "pause", devoiced: true };
  const between = { phone: "i", before: "k", after: "t", devoiced: false };

  test.each([30, 300])("carries nothing from %i /u/ before a pause to /i/, or to between consonants", (n) => {
    const table = devoicingTable(evidenceOf([...several(n, final), ...several(1, between)]));
    const ki = chanceOf(table, { ...place, before: "k" });
    expect(ki).toMatchObject({ how: "too-few", estimate: null, low: null, tokens: 1, alike: 1 });
    const ku = chanceOf(table, { ...place, vowel: "u", before: "k" });
    expect(ku).toMatchObject({ how: "too-few", estimate: null, tokens: 0, alike: 0 });
    const su = chanceOf(table, { ...place, vowel: "u", before: "s", after: "pause" });
    expect(su.estimate!).toBeGreaterThan(0.8);
    expect(chanceOf(table, { ...place, vowel: "u", before: "k", after: "pause" }).how).toBe("too-few");
    expect(fewAlike(table)).toEqual([
      { vowel: "i", place: "between" },
      { vowel: "i", place: "pause" },
      { vowel: "u", place: "between" },
    ]);
  });

  test.each([leastAlike - 1, leastAlike])("says something of /i/ only from five on: %i", (n) => {
    const table = devoicingTable(evidenceOf([...several(30, final), ...several(n, between)]));
    const { estimate, high } = chanceOf(table, { ...place, before: "k" });
    if (n < leastAlike) expect(estimate).toBeNull();
    else {
      expect(estimate).toBe(0);
      expect(high!).toBeGreaterThan(0.3);
    }
  });

  test("is less sure where few words carry the vowels than where many do", () => {
    const width = (words: number) => {
      const rows = Array.from({ length: 40 }, (_, i) => ({
        ...row,
        ...between,
        word: `w${i % words}`,
        devoiced: i % words < words / 2,
      }));
      const { low, high } = chanceOf(devoicingTable(evidenceOf(rows)), { ...place, before: "k" });
      return high! - low!;
    };
    expect(width(4)).toBeGreaterThan(width(40) * 1.5);
  });

  test("speaks of an unknown accent by what accented and unaccented vowels do, with an interval that holds both", () => {
    const table = devoicingTable(evidenceOf(simulateSpeakers(5, 12, 300, 0.3)));
    const [yes, no, unknown] = [true, false, null].map((accented) => chanceOf(table, { ...place, accented }));
    expect(yes!.estimate!).toBeLessThan(no!.estimate!);
    expect(unknown!.estimate!).toBeGreaterThan(yes!.estimate!);
    expect(unknown!.estimate!).toBeLessThan(no!.estimate!);
    expect([unknown!.low, unknown!.high]).toEqual([yes!.low, no!.high]);
  });

  test("says that the accent changes nothing where the corpus does not know it", () => {
    const rows = simulateSpeakers(6, 6, 300, 0.3).map((row) => ({ ...row, accented: null }));
    const table = devoicingTable(evidenceOf(rows));
    expect(table.accentKnown).toBe(false);
    const estimates = [true, false, null].map((accented) => chanceOf(table, { ...place, accented }).estimate);
    expect(new Set(estimates).size).toBe(1);
  });

  test("stays finite where every token of a kind is devoiced", () => {
    const rows = simulateSpeakers(7, 5, 100, 0.3).map((row) =>
      row.after === "k" ? { ...row, devoiced: true } : row,
    );
    const { estimate, high } = chanceOf(devoicingTable(evidenceOf(rows)), { ...place, after: "k" });
    expect(estimate!).toBeGreaterThan(0.9);
    expect(high!).toBeLessThanOrEqual(1);
    expect(estimate!).toBeLessThan(1);
  });
});

test("environmentOf puts every vowel in one place", () => {
  expect(environmentOf(place)).toBe("i sibilant stop no alone");
  expect(environmentOf({ ...place, after: "pause", accented: null, neighbour: true })).toBe(
    "i sibilant pause unknown in-a-row",
  );
  expect(environmentOf({ ...place, after: "cl" })).toBe("i sibilant geminate no alone");
  expect(environmentOf({ ...place, after: "m" })).toBe("high-before-voice");
  expect(environmentOf({ ...place, before: "m" })).toBe("high-after-voice");
  expect(environmentOf({ ...place, before: "pause" })).toBe("high-after-voice");
  expect(environmentOf({ ...place, vowel: "a" })).toBe("low-between");
  expect(environmentOf({ ...place, vowel: "a", after: "m" })).toBe("low-elsewhere");
  expect(environmentOf({ ...place, long: true })).toBe("long");
});
