import { describe, expect, test } from "vitest";
import type { Interval } from "../../../src/alignment/interval.ts";
import { toIntervals } from "../../../src/alignment/toIntervals.ts";
import { type TokenContext, toTokens } from "../../../src/measures/toTokens.ts";
import { normalisePhone } from "../../../src/phonology/phones.ts";

const context: TokenContext = {
  dataset: "d",
  labelSet: "l",
  speaker: "s",
  utterance: "u",
  timeBasis: "aligned",
  timeFloorMs: 30,
  devoicingBasis: "annotated",
  wordOfMora: null,
};

function intervals(text: string, durationsMs?: readonly number[]): Interval[] {
  let startMs = 0;
  const phones = text.split(" ").map((label, i) => {
    const endMs = startMs + (durationsMs?.[i] ?? 100);
    const phone = { ...normalisePhone(label)!, startMs, endMs, accented: null, line: i + 1 };
    startMs = endMs;
    return phone;
  });
  return toIntervals(phones, {
    morae: null,
    moraOfPhone: null,
    accentOfMora: null,
    marksLength: true,
    marksDevoicing: true,
  });
}

const tokens = (text: string, durationsMs?: readonly number[]) =>
  toTokens(intervals(text, durationsMs), context);

describe("toTokens(intervals, context)", () => {
  test("gives every vowel and consonant its neighbours, and pause at the edges", () => {
    expect(tokens("s U k i").map(({ before, phone, after }) => [before, phone, after])).toEqual([
      ["pause", "s", "u"],
      ["s", "u", "k"],
      ["u", "k", "i"],
      ["k", "i", "pause"],
    ]);
  });

  test("lets a geminate begin with its closure for what stands before it", () => {
    const [a, geminate, vowel] = tokens("a q k i");
    expect(a!.after).toBe("cl");
    expect(geminate).toMatchObject({
      phone: "k",
      length: "geminate",
      before: "a",
      after: "i",
      durationMs: 200,
      closureMs: 100,
    });
    expect(vowel!.before).toBe("k");
  });

  test("flags a duration at the aligner's floor, and only there", () => {
    expect(tokens("k a k i", [50, 30, 30.005, 40]).map(({ atFloor }) => atFloor)).toEqual([
      false,
      true,
      true,
      false,
    ]);
    const free = toTokens(intervals("k a", [50, 5]), { ...context, timeFloorMs: null });
    expect(free.map(({ atFloor }) => atFloor)).toEqual([false, false]);
  });

  test("counts position and rate between pauses: long vowel, ん and closure are morae of their own", () => {
    const all = tokens("sil g a q k o: N pau n e sil");
    expect(
      all.map(({ phone, moraInPhrase, phraseMorae, position }) => [
        phone,
        moraInPhrase,
        phraseMorae,
        position,
      ]),
    ).toEqual([
      ["g", 1, 5, "initial"],
      ["a", 1, 5, "initial"],
      ["k", 2, 5, "medial"],
      ["o", 3, 5, "medial"],
      ["N", 5, 5, "final"],
      ["n", 1, 1, "only"],
      ["e", 1, 1, "only"],
    ]);
    expect(all[0]!.speechRateMoraePerSec).toBeCloseTo(5 / 0.6, 10);
  });

  test("knows a devoiceable vowel next door, on either side, within the phrase", () => {
    const neighbours = (text: string) =>
      tokens(text)
        .filter(({ kind }) => kind === "vowel")
        .map(({ devoiceableNeighbour }) => devoiceableNeighbour);
    expect(neighbours("k i sh i k a")).toEqual([true, true, true]);
    expect(neighbours("k a m a k u s a")).toEqual([false, true, false, true]);
    expect(neighbours("sh i pau k a")).toEqual([false, false]);
  });

  test("keeps a mark's basis with it, and none where there is no mark", () => {
    expect(tokens("s U").map(({ devoiced, devoicedBasis }) => [devoiced, devoicedBasis])).toEqual([
      [null, null],
      [true, "annotated"],
    ]);
    const unmarked = toTokens(intervals("s U"), { ...context, devoicingBasis: null });
    expect(unmarked.map(({ devoiced, devoicedBasis }) => [devoiced, devoicedBasis])).toEqual([
      [null, null],
      [null, null],
    ]);
  });
});
