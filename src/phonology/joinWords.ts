import { kanaToMorae, type Mora } from "./kana.ts";
import type { Piece, TextReading } from "./readingTypes.ts";

/** Offset of each mora in a reading that kanaToMorae takes without remainder; `、` stands for a break. */
function moraOffsets(kana: string, morae: readonly Mora[]): number[] {
  let offset = 0;
  return morae.map((mora) => {
    while (kana[offset] === "、") offset += 1;
    const start = offset;
    offset += mora.kana.length;
    return start;
  });
}

/** The reading of all words in one, each word with its morae; `indexOf` leads back to the original text. */
export function joinWords(
  pieces: readonly Piece[],
  original: string,
  indexOf: readonly number[],
): TextReading {
  let kana = "";
  const spoken: { piece: Piece; from: number; to: number }[] = [];
  const unread: { index: number; text: string }[] = [];
  for (const piece of pieces) {
    if (piece.readings.length > 0) {
      const from = kana.length;
      kana += piece.readings[0];
      spoken.push({ piece, from, to: kana.length });
    } else {
      if (kana !== "" && !kana.endsWith("、")) kana += "、";
      if (!piece.isBreak) {
        const index = indexOf[piece.start]!;
        unread.push({ index, text: original.slice(index, indexOf[piece.end]!) });
      }
    }
  }
  const { morae } = kanaToMorae(kana);
  const offsets = moraOffsets(kana, morae);
  const moraAt = (offset: number) => {
    const at = offsets.findIndex((start) => start >= offset);
    return at < 0 ? morae.length : at;
  };
  const words = spoken.map(({ piece, from, to }) => ({
    surface: original.slice(indexOf[piece.start]!, indexOf[piece.end]!),
    reading: piece.readings[0]!,
    moraStart: moraAt(from),
    moraEnd: moraAt(to),
    partOfSpeech: piece.pos,
    alternatives: piece.readings.slice(1),
    accent: piece.accent,
  }));
  return { words, morae, kana: kana.replace(/、$/u, ""), unread };
}
