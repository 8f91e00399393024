import { describe, expect, test } from "vitest";
import { lexiconAccents } from "../../../src/phonology/lexiconAccents.ts";
import type { ReadWord } from "../../../src/phonology/readingTypes.ts";

const word = (accent: string | null, moraStart: number, moraEnd: number): ReadWord => ({
  surface: "",
  reading: "",
  moraStart,
  moraEnd,
  partOfSpeech: "",
  alternatives: [],
  accent,
});

describe("lexiconAccents()", () => {
  test("puts the nucleus on the mora before the fall and none into a flat word", () => {
    expect(lexiconAccents([word("1", 0, 2), word(null, 2, 3), word("0", 3, 5)], 5)).toEqual([
      true,
      false,
      null,
      false,
      false,
    ]);
    expect(lexiconAccents([word("3", 0, 3)], 3)).toEqual([false, false, true]);
  });

  test("says nothing of several accents, of one beyond the word and of none", () => {
    expect(lexiconAccents([word("0,2", 0, 2)], 2)).toBeNull();
    expect(lexiconAccents([word("3", 0, 2)], 2)).toBeNull();
    expect(lexiconAccents([word(null, 0, 2)], 2)).toBeNull();
  });
});
