import type { Piece } from "../../../src/phonology/readingTypes.ts";

/** Pieces one after another from `surface:reading:detail` words; no reading means a break for punctuation. */
export function pieces(words: string): Piece[] {
  let start = 0;
  return words.split(" ").map((word) => {
    const [surface, reading = "", detail = "一般", pos = "名詞"] = word.split(":") as [
      string,
      string?,
      string?,
      string?,
    ];
    const piece: Piece = {
      start,
      end: start + surface.length,
      surface,
      pos,
      detail,
      detail2: detail === "接尾" ? "助数詞" : "*",
      readings: reading === "" ? [] : reading.split("/"),
      isBreak: reading === "" && /^\p{P}$/u.test(surface),
      accent: null,
    };
    start = piece.end;
    return piece;
  });
}

export const readingsOf = (read: readonly Piece[]): string =>
  read.map((piece) => piece.readings[0] ?? (piece.isBreak ? "、" : "?")).join(" ");
