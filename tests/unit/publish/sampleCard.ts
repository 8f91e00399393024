import type { CardToken, TokenCard } from "../../../src/publish/tokenCard.ts";

/** An invented card: デス with a devoiced u. */
export function sampleCard(token: Partial<CardToken> = {}, more: Partial<TokenCard> = {}): TokenCard {
  const consonant = { voicing: null, own: false };
  return {
    ...{ dataset: "d", utterance: "u1", speaker: "one", fromMs: 0, toMs: 500 },
    morae: [
      {
        ...{ kana: "デ", inKana: true, startMs: 40, endMs: 200 },
        parts: [
          { phone: "d", startMs: 40, endMs: 100, ...consonant },
          { phone: "e", startMs: 100, endMs: 200, voicing: "voiced", own: false },
        ],
      },
      {
        ...{ kana: "ス", inKana: true, startMs: 200, endMs: 460 },
        parts: [
          { phone: "s", startMs: 200, endMs: 400, ...consonant },
          { phone: "u", startMs: 400, endMs: 460, voicing: "devoiced", own: true },
        ],
      },
    ],
    token: {
      ...{ phone: "u", kind: "vowel", length: "short", before: "s", after: "pause", word: "です" },
      ...{ durationMs: 60, durationErrorMs: 9, timeBasis: "aligned", atFloor: false },
      decision: { devoiced: true, probability: 0.97, basis: "measured" },
      ...{ markedDevoiced: null, voicedMs: 1, measureReason: null },
      ...token,
    },
    stretch: { fromMs: 200, toMs: 490 },
    voice: {
      fromMs: 0,
      stepMs: 5,
      probability: Float32Array.from({ length: 100 }, (_, i) => (i < 40 ? 1 : 0)),
    },
    spectrum: { columns: 4, rows: 2, levelsDb: Float32Array.of(-20, -20, -60, -60, -40, -40, -90, -90) },
    ...more,
  };
}
