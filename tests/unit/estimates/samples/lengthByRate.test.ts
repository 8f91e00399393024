import { expect, test } from "vitest";
import { cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { normaliseDurations } from "../../../../src/estimates/normaliseDurations.ts";
import { durationRatios } from "../../../../src/estimates/ratios.ts";
import { lengthByRate } from "../../../../src/estimates/samples/lengthByRate.ts";
import { tokenTableOfRows } from "../../../../src/estimates/tokenTable.ts";
import { seededRandom } from "../../../../src/statistics/seededRandom.ts";
import { plainToken } from "../sampleTokens.ts";

/** Vowels whose long ones are `ratio` times as long; with `hidden`, long ones are only said in fast stretches. */
function invent(ratio: number, hidden: boolean) {
  const random = seededRandom(5);
  return ["s1", "s2", "s3", "s4"].flatMap((speaker, s) =>
    Array.from({ length: 300 }, (_, index) => {
      const fast = random.uniform() < 0.5;
      const long = hidden ? fast && random.uniform() < 0.6 : random.uniform() < 0.3;
      const speechRateMoraePerSec = (fast ? 10 : 6) * (1 + s / 10) * (1 + 0.02 * random.normal());
      const ms = (500 / speechRateMoraePerSec) * (long ? ratio : 1) * Math.exp(0.1 * random.normal());
      return {
        ...plainToken,
        ...{ speaker, phone: "o", length: long ? "long" : "short", utterance: `u${index}`, index },
        ...{ durationMs: Math.round(ms), speechRateMoraePerSec, startMs: 0, endMs: ms, word: null },
      };
    }),
  );
}

const rows = invent(2, false);
const of = (tokens: readonly object[]) =>
  lengthByRate(
    tokenTableOfRows(tokens as readonly Record<string, unknown>[]),
    Uint32Array.from(tokens, (_, row) => row),
    0.95,
  ).find(({ contrast }) => contrast === "vowel-length")!;

test("lengthByRate's plain ratios are those of the cells, its others those of normaliseDurations", () => {
  const { raw, perMora } = of(rows);
  const options = { contrast: "vowel-length", by: ["phone"], level: 0.95 } as const;
  const plain = durationRatios(cellsFromTokens(rows), options).rows[0]!;
  const normalised = durationRatios(cellsFromTokens(normaliseDurations(rows, "mora")), options).rows[0]!;
  const phone = (list: typeof raw) => list.find(({ by }) => by.phone === "o")!;
  expect(phone(raw)).toMatchObject({ estimate: plain.estimate, low: plain.low, high: plain.high });
  expect(phone(perMora).estimate).toBeCloseTo(normalised.estimate!, 10);
  expect(phone(perMora).high).toBeCloseTo(normalised.high!, 10);
});

test("lengthByRate per mora finds the invented ratio where speed hides it from plain durations", () => {
  const { raw, perMora } = of(invent(2, true));
  expect(raw[0]!.estimate).toBeLessThan(1.8);
  expect(perMora[0]!.estimate!).toBeGreaterThan(1.95);
  expect(perMora[0]!.estimate!).toBeLessThan(2.05);
});

test("lengthByRate's bands are thirds of each speaker's own rates, each with the invented ratio", () => {
  const { bands, raw } = of(rows);
  expect(bands.map(({ band }) => band)).toEqual(["slow", "middle", "fast"]);
  expect(bands.reduce((sum, { row }) => sum + row.tokens, 0)).toBe(raw[0]!.tokens);
  for (const { row } of bands) {
    expect(row.tokens / rows.length).toBeCloseTo(1 / 3, 1);
    expect(row.speakers).toBe(4);
    expect(row.low!).toBeLessThan(2);
  }
});

test("lengthByRate without known rates has nothing", () => {
  const none = rows.map((row) => ({ ...row, speechRateMoraePerSec: null }));
  expect(
    lengthByRate(
      tokenTableOfRows(none),
      Uint32Array.from(none, (_, row) => row),
      0.95,
    ),
  ).toEqual([]);
});
