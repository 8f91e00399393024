import { expect, test } from "vitest";
import { tokenTableOfRows } from "../../../src/estimates/tokenTable.ts";
import { vowelSpace } from "../../../src/estimates/vowelSpace.ts";
import { formantsOneSpeaker, noFormants, notNormalised } from "../../../src/messages/explain.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";
import { notFinite } from "./explain/inventVowels.ts";

// Kasuya H., Suzuki H. & Kido K. (1968) J. Acoust. Soc. Japan 24:355–364, men, seen in a file that quotes it.
const men: Readonly<Record<string, readonly [number, number]>> = {
  a: [775, 1163],
  i: [263, 2263],
  u: [363, 1300],
  e: [475, 1738],
  o: [550, 838],
};

/** Vowels about the published means; a speaker's tract stretches all formants by `stretch`. */
function invent(speaker: string, stretch: number, f0Hz: number, seed: number, each = 20) {
  const random = seededRandom(seed);
  return Object.entries(men).flatMap(([phone, [f1, f2]]) =>
    Array.from({ length: each }, (_, i) => ({
      ...{ dataset: "d", labelSet: "l", speaker, utterance: "u", index: i, kind: "vowel", phone, f0Hz },
      length: i % 4 === 0 ? "long" : "short",
      devoicedHeard: false,
      f1Hz: f1 * stretch * Math.exp(0.05 * random.normal()),
      f2Hz: f2 * stretch * Math.exp(0.05 * random.normal()),
    })),
  );
}

const lower = [1, 2, 3].flatMap((k) => invent(`m${k}`, 0.95 + 0.025 * k, 120, k));
const higher = [4, 5].flatMap((k) => invent(`f${k}`, 1.2, 220, k));
const space = (rows: readonly Readonly<Record<string, unknown>>[]) => vowelSpace(tokenTableOfRows(rows));

test("vowelSpace is the mean over speakers of their means, with spreads, by pitch of voice", () => {
  const [got] = space([...lower, ...higher]);
  expect(got!.groups.map(({ group, speakers }) => [group, speakers])).toEqual([
    ["higher voices", 2],
    ["lower voices", 3],
  ]);
  const u = got!.groups[1]!.vowels.find(({ vowel, length }) => vowel === "u" && length === "all")!;
  const own = ["m1", "m2", "m3"].map((speaker) =>
    lower.filter((row) => row.speaker === speaker && row.phone === "u").map(({ f2Hz }) => f2Hz),
  );
  const means = own.map(average);
  expect(u.f2Hz.estimate).toBeCloseTo(average(means), 9);
  expect(u.f2Hz.betweenSpeakers).toBeCloseTo(Math.sqrt(squares(means) / 2), 9);
  expect(u.f2Hz.withinSpeakers).toBeCloseTo(Math.sqrt(own.reduce((sum, x) => sum + squares(x), 0) / 57), 9);
  // t with 2 degrees of freedom: 4.302653 (tables).
  expect(u.f2Hz.high! - u.f2Hz.estimate).toBeCloseTo(
    4.302652729911275 * Math.sqrt(squares(means) / 2 / 3),
    6,
  );
  expect(u).toMatchObject({ tokens: 60, speakers: 3 });
});

test("vowelSpace normalised does not change when a speaker's tract stretches, and has mean 0 and sd 1", () => {
  const z = (rows: readonly Readonly<Record<string, unknown>>[]) =>
    space(rows)[0]!.groups[0]!.vowels.filter(({ length }) => length === "all");
  const [plain, stretched] = [z(invent("m", 1, 120, 9)), z(invent("m", 1.31, 120, 9))];
  for (const [k, vowel] of plain.entries()) {
    expect(stretched[k]!.f1Z!.estimate).toBeCloseTo(vowel.f1Z!.estimate, 10);
    expect(stretched[k]!.f1Hz.estimate).toBeCloseTo(1.31 * vowel.f1Hz.estimate, 8);
  }
  expect(average(plain.map(({ f2Z }) => f2Z!.estimate))).toBeCloseTo(0, 10);
  const meanSquare = average(
    plain.map(({ f2Z }) => f2Z!.estimate ** 2 + (f2Z!.withinSpeakers! ** 2 * 19) / 20),
  );
  expect(meanSquare).toBeCloseTo(1, 10);
});

test("vowelSpace compares long with short vowels within each speaker, in semitones too", () => {
  const rows = lower.map((row) => (row.length === "long" ? { ...row, f1Hz: row.f1Hz * 2 ** (1 / 12) } : row));
  const before = space(lower)[0]!.groups[0]!.longAgainstShort;
  for (const [k, shift] of space(rows)[0]!.groups[0]!.longAgainstShort.entries()) {
    expect(shift).toMatchObject({ speakers: 3, longTokens: 15, shortTokens: 45 });
    expect(shift.f1Semitones.estimate).toBeCloseTo(before[k]!.f1Semitones.estimate + 1, 9);
    expect(shift.f2Semitones.estimate).toBeCloseTo(before[k]!.f2Semitones.estimate, 9);
  }
});

test("vowelSpace takes groups that are known from the caller", () => {
  const got = vowelSpace(tokenTableOfRows(lower), {
    groupOf: (_, speaker) => (speaker === "m1" ? "one" : "rest"),
  });
  expect(got[0]!.groups.map(({ group, speakers }) => [group, speakers])).toEqual([
    ["one", 1],
    ["rest", 2],
  ]);
  expect(got[0]!.groups[0]!.warnings).toEqual([formantsOneSpeaker()]);
});

test.each([
  ["no rows", [], null],
  ["no acoustic columns", lower.map(({ f1Hz: _, f2Hz: __, ...row }) => row), noFormants()],
  ["formants that are NaN", lower.map((row) => ({ ...row, f1Hz: Number.NaN })), noFormants()],
])("vowelSpace of %s states the reason", (_, rows, reason) => {
  expect(space(rows).map((one) => one.reason)).toEqual(reason === null ? [] : [reason]);
});

test("vowelSpace of too little gives nulls and says so, never NaN", () => {
  const one = space(lower.slice(0, 1));
  expect(notFinite(one)).toEqual([]);
  expect(one[0]!.groups[0]!.vowels[0]!.f1Hz).toMatchObject({ low: null, high: null, withinSpeakers: null });
  expect(one[0]!.groups[0]!.vowels[0]!.f1Z).toBeNull();
  expect(one[0]!.warnings).toContain(notNormalised(1, 3));
  const same = space(lower.map((row) => ({ ...row, f1Hz: 500, f2Hz: 1500 })));
  expect(notFinite(same)).toEqual([]);
});

function average(values: readonly number[]): number {
  return values.reduce((sum, x) => sum + x, 0) / values.length;
}

function squares(values: readonly number[]): number {
  const mean = average(values);
  return values.reduce((sum, x) => sum + (x - mean) ** 2, 0);
}
