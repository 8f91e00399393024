import { describe, expect, test } from "vitest";
import type { CardToken } from "../../../src/publish/tokenCard.ts";
import {
  decisionInWords,
  durationInWords,
  durationWithError,
  placeInWords,
  stretchInWords,
  tokenCardAlt,
} from "../../../src/publish/tokenCardWords.ts";
import { sampleCard } from "./sampleCard.ts";

const token = (changes: Partial<CardToken> = {}) => sampleCard(changes).token;
const decided = (probability: number) =>
  token({ decision: { devoiced: probability >= 0.5, probability, basis: "measured" } });
const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("decisionInWords", () => {
  test.each([
    [0.97, "devoiced, 97 %; clear"],
    [0.9999, "devoiced, over 99 %; clear"],
    [0.85, "devoiced, 85 %; fairly clear"],
    [0.6, "devoiced, 60 %; near the boundary"],
    [0.3, "voiced, 70 %; near the boundary"],
    [0.2, "voiced, 80 %; fairly clear"],
    [0.0001, "voiced, over 99 %; clear"],
  ])("a probability of %d is told as %s", (probability, words) => {
    expect(plain(decisionInWords(decided(probability)))).toBe(words);
  });

  test("a label's mark has no probability", () => {
    const decision = { devoiced: false, probability: null, basis: "annotated" } as const;
    expect(decisionInWords(token({ decision }))).toBe("voiced, by the label");
  });

  test("without a decision the reason is told, and a consonant has none to tell", () => {
    expect(decisionInWords(token({ decision: null, measureReason: "too-noisy" }))).toBe(
      "voicing unknown: the recording is too noisy",
    );
    expect(decisionInWords(token({ decision: null }))).toBe("voicing unknown");
    expect(decisionInWords(token({ decision: null, kind: "consonant" }))).toBe("");
  });
});

test("durationInWords gives uncertainty and basis, and says when the floor hides the true length", () => {
  expect(plain(durationInWords(token()))).toBe("60 ms; edges aligned, voice measured");
  expect(plain(durationWithError(token()))).toBe("60 ms (sound alone: ±9 ms); edges aligned, voice measured");
  expect(plain(durationInWords(token({ atFloor: true, durationErrorMs: null, decision: null })))).toBe(
    "at most 60 ms; edges aligned",
  );
});

test("placeInWords names the neighbours, and a person's mark that says otherwise", () => {
  expect(placeInWords(token())).toBe("ɯ (u) between s and a pause");
  expect(placeInWords(token({ markedDevoiced: false, after: "cl" }))).toBe(
    "ɯ (u) between s and a doubled consonant, marked voiced",
  );
  expect(placeInWords(token({ kind: "consonant", phone: "t", length: "geminate", decision: null }))).toBe(
    "doubled t between s and a pause",
  );
});

test("stretchInWords names voiceless neighbours only, where the search goes beyond the vowel", () => {
  expect(stretchInWords({ before: "k", after: "t" })).toBe("C1’s release to C2’s onset");
  expect(stretchInWords({ before: "n", after: "a" })).toBe("its start to its end");
  expect(stretchInWords({ before: "a", after: "pause" })).toBe("its start into the pause");
});

test("tokenCardAlt says finding, stretch and surroundings", () => {
  expect(plain(tokenCardAlt(sampleCard()))).toBe(
    "ɯ (u) between s and a pause, in です: devoiced, 97 %; clear; 60 ms (sound alone: ±9 ms); edges aligned, voice measured. Of the 290 ms from C1’s release into the pause about 1 ms carry the vowel's voice. Spoken around it: デス.",
  );
});
