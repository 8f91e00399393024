import { describe, expect, test } from "vitest";
import { learnSpeaker } from "../../../src/measures/acoustics/learnSpeaker.ts";
import { analyseVoicing } from "../../../src/measures/acoustics/voicingFrames.ts";
import { tokenCardData } from "../../../src/publish/tokenCardData.ts";
import type { CardRow, CardUtterance } from "../../../src/publish/tokenCardSource.ts";
import { tokenCardSvg } from "../../../src/publish/tokenCardSvg.ts";

const nothing = {
  ...{ length: null, closureEndMs: null, word: null, durationMs: null, durationErrorMs: null, atFloor: null },
  ...{ devoiced: null, devoicedBasis: null, devoicedHeard: null, devoicedProbability: null, voicedMs: null },
  ...{ measureReason: null, before: null, after: null, labelSet: "s", timeBasis: "aligned" },
} as const;

/** ス between pauses: [s] from 100, [u] from 200 to 300 ms. */
function rowsOf(vowel: Partial<CardRow> = {}): CardRow[] {
  return [
    { ...nothing, index: 0, phone: "pause", kind: null, mora: null, startMs: 0, endMs: 100 },
    { ...nothing, index: 1, phone: "s", kind: "consonant", mora: 0, startMs: 100, endMs: 200 },
    { ...nothing, index: 2, phone: "u", kind: "vowel", mora: 0, startMs: 200, endMs: 300, ...vowel },
  ];
}
const utteranceOf = (rows: readonly CardRow[]): CardUtterance => ({
  ...{ dataset: "d", utterance: "u1", speaker: "one", audio: "u1.wav", reading: "ス" },
  ...{ audioStartSec: null, audioEndSec: null },
  sets: new Map([["s", rows]]),
});
const signalOf = (samples: Float32Array, phones: readonly CardRow[]) => ({
  ...{ samples, phones, frames: analyseVoicing(samples), speaker: learnSpeaker([]) },
});
const cardOf = (rows: readonly CardRow[], samples: Float32Array | null) =>
  tokenCardData(utteranceOf(rows), rows, 2, samples && signalOf(samples, rows));

describe("tokenCardData", () => {
  test("a silent recording shows no sound and no voice", () => {
    const card = cardOf(rowsOf({ measureReason: "silent" }), new Float32Array(8000));
    const svg = tokenCardSvg(card);
    expect(svg).toContain("voicing unknown: the recording is silent");
    expect(svg).not.toMatch(/NaN|undefined|<image/);
    expect(svg).toContain("Voice was not judged");
    expect([card.voice, card.stretch]).toEqual([null, null]);
  });

  test.each([
    ["starts", 4800],
    ["ends within the vowel", 4000],
    ["ends before the vowel", 2400],
    ["is empty", 0],
    ["is one sample long", 1],
  ])("bears a recording that %s", (_, length) => {
    const samples = Float32Array.from({ length }, (_, i) => Math.sin(i / 20) / 2);
    const svg = tokenCardSvg(cardOf(rowsOf(), samples));
    expect(svg).toContain("voicing unknown");
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  test("a mark that a rule wrote decides nothing, a person's does, and hearing comes first", () => {
    const decision = (vowel: Partial<CardRow>) => cardOf(rowsOf(vowel), null).token.decision;
    expect(decision({ devoiced: true, devoicedBasis: "predicted" })).toBeNull();
    expect(decision({ devoiced: true, devoicedBasis: "annotated" })).toEqual({
      ...{ devoiced: true, probability: null, basis: "annotated" },
    });
    const heard = { devoicedHeard: false, devoicedProbability: 0.1 };
    const both = cardOf(rowsOf({ devoiced: true, devoicedBasis: "annotated", ...heard }), null);
    expect(both.token.decision).toEqual({ devoiced: false, probability: 0.1, basis: "measured" });
    expect(both.token.markedDevoiced).toBe(true);
    expect(both.morae[0]!.parts[1]!.voicing).toBe("voiced");
  });

  test("shows the whole stretch in which voice was looked for", () => {
    const { stretch, fromMs, toMs } = cardOf(rowsOf(), new Float32Array(8000).fill(0.1));
    expect(stretch!.toMs).toBeGreaterThan(300);
    expect(fromMs).toBeLessThan(stretch!.fromMs);
    expect(toMs).toBeGreaterThan(stretch!.toMs);
  });

  test("refuses a pause", () => {
    expect(() => tokenCardData(utteranceOf(rowsOf()), rowsOf(), 0, null)).toThrow(RangeError);
  });
});
