import { expect, test } from "vitest";
import { formantSample } from "../../../../src/estimates/samples/formantSample.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { vowelSpace } from "../../../../src/estimates/vowelSpace.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";

const centres = { a: [800, 1300], i: [300, 2300], u: [350, 1300], e: [480, 1800], o: [500, 850] } as const;

/** Vowels whose F1 and F2 share a part: variances 1600 and 8100 Hz², covariance 1800 Hz², the same for all. */
function invent(speaker: string, shift: number, each: number, f0Hz = 120) {
  const random = seededRandom(shift + 1);
  return Object.entries(centres).flatMap(([phone, [f1, f2]]) =>
    Array.from({ length: each }, (_, index) => {
      const [u, v] = [random.normal(), random.normal()];
      return {
        ...{ dataset: "d", labelSet: "l", speaker, utterance: "u", index, kind: "vowel", phone, f0Hz },
        ...{ length: index % 5 === 0 ? "long" : "short", devoicedHeard: false },
        f1Hz: f1 + shift + 40 * u,
        f2Hz: f2 + shift + 45 * u + Math.sqrt(8100 - 45 * 45) * v,
      };
    }),
  );
}

const all = (rows: readonly object[]) => Uint32Array.from(rows, (_, row) => row);

test("formantSample's spread is the covariance within speakers, however far the speakers lie apart", () => {
  const rows = [invent("s1", 0, 2000), invent("s2", 150, 2000)].flat();
  const { spreads } = formantSample(tokenTableOfRows(rows), all(rows), 1);
  const { hz } = spreads.find(({ vowel, length }) => vowel === "a" && length === "all")!;
  expect(hz!.f1).toBeGreaterThan(0.93 * 1600);
  expect(hz!.f1).toBeLessThan(1.07 * 1600);
  expect(hz!.f2 / 8100).toBeCloseTo(1, 1);
  expect(hz!.both / 1800).toBeCloseTo(1, 0);
});

test("formantSample's spreads are those of vowelSpace, squared, in both scales", () => {
  const rows = [invent("s1", 0, 30), invent("s2", 90, 30), invent("s3", 20, 30, 220)].flat();
  const table = tokenTableOfRows(rows);
  const { spreads } = formantSample(table, all(rows), 1);
  const centroids = vowelSpace(table)[0]!.groups.flatMap(({ group, vowels }) =>
    vowels.map((vowel) => ({ group, ...vowel })),
  );
  expect(centroids.length).toBe(spreads.length);
  for (const { group, vowel, length, hz, z } of spreads) {
    const same = centroids.find(
      (one) => one.group === group && one.vowel === vowel && one.length === length,
    )!;
    expect(Math.sqrt(hz!.f1)).toBeCloseTo(same.f1Hz.withinSpeakers!, 8);
    expect(Math.sqrt(hz!.f2)).toBeCloseTo(same.f2Hz.withinSpeakers!, 8);
    expect(Math.sqrt(z!.f2)).toBeCloseTo(same.f2Z!.withinSpeakers!, 8);
  }
});

test("formantSample draws at most 150 points a vowel and length, each with its place in both scales", () => {
  const rows = invent("s1", 0, 1000);
  const { points } = formantSample(tokenTableOfRows(rows), all(rows), 1);
  expect(points.length).toBe(5 * 2 * 150);
  expect(points.every(({ hz, z }) => Number.isInteger(hz[0]) && z !== null && Number.isFinite(z[1]))).toBe(
    true,
  );
});

test("formantSample without formants is empty, and a speaker who lacks vowels has no normalised points", () => {
  const none = invent("s1", 0, 5).map((row) => ({ ...row, f1Hz: null }));
  expect(formantSample(tokenTableOfRows(none), all(none), 1)).toEqual({ spreads: [], points: [] });
  const few = invent("s1", 0, 5).filter(({ phone }) => phone !== "e");
  const { points, spreads } = formantSample(tokenTableOfRows(few), all(few), 1);
  expect(points.every(({ z }) => z === null)).toBe(true);
  expect(spreads.every(({ z }) => z === null)).toBe(true);
});
