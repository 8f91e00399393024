import { describe, expect, test } from "vitest";
import type { LabelPhone } from "../../../src/alignment/labelPhone.ts";
import { type IntervalContext, toIntervals } from "../../../src/alignment/toIntervals.ts";
import { kanaToMorae } from "../../../src/phonology/kana.ts";
import { matchPhonesToMorae } from "../../../src/phonology/matchPhones.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";

/** 100 ms a phone. */
function labels(text: string): LabelPhone[] {
  return text.split(" ").map((label, i) => ({
    ...normalisePhone(label)!,
    startMs: i * 100,
    endMs: (i + 1) * 100,
    accented: null,
    line: i + 1,
  }));
}

const unknown: IntervalContext = {
  morae: null,
  moraOfPhone: null,
  accentOfMora: null,
  marksLength: false,
  marksDevoicing: false,
};

function withReading(phones: readonly LabelPhone[], kana: string): IntervalContext {
  const { morae } = kanaToMorae(kana);
  const moraOfPhone = matchPhonesToMorae(
    phones.filter(({ phone }) => phone !== "pause"),
    morae,
  );
  expect(moraOfPhone).not.toBeNull();
  return { ...unknown, morae, moraOfPhone };
}

const brief = (phones: readonly LabelPhone[], context: IntervalContext) =>
  toIntervals(phones, context).map(({ phone, length, mora, endMs }) => [phone, length, mora, endMs]);

describe("toIntervals(phones, context)", () => {
  test("joins a doubled vowel only where the reading writes one long vowel: 大きい against 里親", () => {
    const ookii = labels("o o k i i");
    expect(brief(ookii, withReading(ookii, "オーキー"))).toEqual([
      ["o", "long", 0, 200],
      ["k", "single", 2, 300],
      ["i", "long", 2, 500],
    ]);
    const satooya = labels("s a t o o y a");
    expect(brief(satooya, withReading(satooya, "サトオヤ")).map(([, length]) => length)).toEqual([
      "single",
      "short",
      "single",
      "short",
      "short",
      "single",
      "short",
    ]);
  });

  test("leaves the length of neighbouring vowels open when nothing tells it", () => {
    expect(brief(labels("k o o k a"), unknown).map(([phone, length]) => [phone, length])).toEqual([
      ["k", "single"],
      ["o", null],
      ["o", null],
      ["k", "single"],
      ["a", "short"],
    ]);
  });

  test("takes length from the label where the label set marks it", () => {
    expect(brief(labels("k o: a"), { ...unknown, marksLength: true })).toEqual([
      ["k", "single", 0, 100],
      ["o", "long", 0, 200],
      ["a", "short", 2, 300],
    ]);
  });

  test("joins a closure with the consonant it lengthens and keeps where the closure ends", () => {
    const [, geminate, vowel] = toIntervals(labels("a q t a"), unknown);
    expect(geminate).toMatchObject({
      phone: "t",
      length: "geminate",
      startMs: 100,
      closureEndMs: 200,
      endMs: 300,
      mora: 1,
    });
    expect(vowel).toMatchObject({ phone: "a", mora: 2 });
  });

  test("keeps a closure before a pause or a vowel for itself", () => {
    expect(brief(labels("a cl pau"), unknown)).toEqual([
      ["a", "short", 0, 100],
      ["cl", null, 1, 200],
      ["pause", null, null, 300],
    ]);
  });

  test("joins neighbouring pauses", () => {
    expect(brief(labels("silB sp a silE"), unknown).map(([phone]) => phone)).toEqual(["pause", "a", "pause"]);
  });

  test("carries devoicing marks only of label sets that give them", () => {
    const phones = labels("s U k i");
    expect(toIntervals(phones, unknown).map(({ devoiced }) => devoiced)).toEqual([null, null, null, null]);
    expect(toIntervals(phones, { ...unknown, marksDevoicing: true }).map(({ devoiced }) => devoiced)).toEqual(
      [null, true, null, false],
    );
  });

  test("covers the same time in the same order, whatever it joins", () => {
    const phones = labels("sil ky o o t o pau i cl p o N sil");
    const intervals = toIntervals(phones, withReading(phones, "キョート、イッポン"));
    expect(intervals[0]!.startMs).toBe(0);
    expect(intervals.at(-1)!.endMs).toBe(phones.at(-1)!.endMs);
    for (const [i, { startMs }] of intervals.slice(1).entries()) expect(startMs).toBe(intervals[i]!.endMs);
  });
});
