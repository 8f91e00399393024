import { describe, expect, test } from "vitest";
import { type CardInterval, moraeAround, tokenCardMorae } from "../../../src/publish/tokenCardMorae.ts";

type Sound = readonly [phone: string, mora: number | null, closureMs?: number];

/** Sounds of 100 ms each, one after the other. */
function intervalsOf(sounds: readonly Sound[]): CardInterval[] {
  return sounds.map(([phone, mora, closureMs], index) => ({
    ...{ index, phone, mora, length: null, voicing: "voiced" },
    ...{ startMs: 100 * index, endMs: 100 * index + 100 },
    closureEndMs: closureMs === undefined ? null : 100 * index + closureMs,
  }));
}
const told = (morae: ReturnType<typeof tokenCardMorae>) =>
  morae.map(({ kana, startMs, endMs }) => [kana, startMs, endMs]);

describe("tokenCardMorae", () => {
  test("a geminate's closure is a mora of its own, and both parts are the token's", () => {
    const kitte = intervalsOf([
      ["k", 0],
      ["i", 0],
      ["t", 1, 60],
      ["e", 2],
    ]);
    const morae = tokenCardMorae(kitte, 2, "キッテ");
    expect(told(morae)).toEqual([
      ["キ", 0, 200],
      ["ッ", 200, 260],
      ["テ", 260, 400],
    ]);
    expect(morae.map(({ parts }) => parts.map(({ phone, own }) => `${phone}${own ? "*" : ""}`))).toEqual([
      ["k", "i"],
      ["cl*"],
      ["t*", "e"],
    ]);
  });

  test("a long vowel is drawn as one with its mora, in the middle and at the end", () => {
    const kooto = intervalsOf([
      ["k", 0],
      ["o", 0],
      ["t", 2],
      ["o", 2],
    ]);
    expect(told(tokenCardMorae(kooto, 1, "コートー"))).toEqual([
      ["コー", 0, 200],
      ["トー", 200, 400],
    ]);
  });

  test("shows four morae on either side, and none beyond a pause", () => {
    const many = intervalsOf(Array.from({ length: 20 }, (_, i) => ["a", i] as const));
    expect(tokenCardMorae(many, 10, null)).toHaveLength(2 * moraeAround + 1);
    expect(tokenCardMorae(many, 0, null)).toHaveLength(moraeAround + 1);
    const paused = intervalsOf([
      ["a", 0],
      ["pause", null],
      ["i", 1],
      ["u", 2],
      ["pause", null],
      ["e", 3],
    ]);
    expect(told(tokenCardMorae(paused, 3, "アイウエ"))).toEqual([
      ["イ", 200, 300],
      ["ウ", 300, 400],
    ]);
  });

  test("falls back on IPA where the reading does not fit", () => {
    const [mora] = tokenCardMorae(
      intervalsOf([
        ["sh", 0],
        ["u", 0],
      ]),
      1,
      null,
    );
    expect(mora).toMatchObject({ kana: "ɕɯ", inKana: false });
  });

  test("consonants have no voicing of their own to show", () => {
    const [mora] = tokenCardMorae(
      intervalsOf([
        ["s", 0],
        ["u", 0],
      ]),
      1,
      "ス",
    );
    expect(mora!.parts.map(({ voicing }) => voicing)).toEqual([null, "voiced"]);
  });
});
