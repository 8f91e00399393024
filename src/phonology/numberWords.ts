import { counterRule } from "./counterTable.ts";
import { joinCounter, readCounted } from "./readCounted.ts";
import type { Piece } from "./readingTypes.ts";
import { readNumeral } from "./readNumeral.ts";

const digits = /^[０-９]+$/u;
const kanjiNumerals = /^[〇一二三四五六七八九十百千万億兆京]+$/u;
const bareUnit = /^[万億兆京]+$/u;
const inner = /^[．，：・／－‐‑–−]$/u;
/** Words that stand for a number: 何本 ナンボン, 数百 スーヒャク. */
const openNumbers = new Set(["何", "数", "幾", "十数", "数十"]);

const isNumeral = (piece: Piece | undefined): boolean =>
  piece !== undefined &&
  (digits.test(piece.surface) || (kanjiNumerals.test(piece.surface) && piece.detail === "数"));

/** End (exclusive) of the run of numerals from `from`; separators count when a numeral follows at once. */
function runEnd(pieces: readonly Piece[], from: number): number {
  let end = from;
  while (
    isNumeral(pieces[end]) ||
    (end > from && inner.test(pieces[end]?.surface ?? "") && digits.test(pieces[end + 1]?.surface ?? ""))
  )
    end += 1;
  // 万 and its like without a digit are words: 万年 マンネン.
  return end === from + 1 && bareUnit.test(pieces[from]!.surface) ? from : end;
}

function isCounter(piece: Piece | undefined): piece is Piece {
  if (!piece || piece.readings.length === 0) return false;
  return (
    (piece.detail === "接尾" && piece.detail2 === "助数詞") ||
    counterRule(piece.surface)?.key === piece.surface
  );
}

function merge(pieces: readonly Piece[], readings: readonly string[]): Piece {
  const first = pieces[0]!;
  return {
    ...first,
    end: pieces.at(-1)!.end,
    surface: pieces.map((piece) => piece.surface).join(""),
    pos: "名詞",
    detail: "数",
    readings,
    isBreak: false,
  };
}

/** The first of the month is ツイタチ, one day is イチニチ. */
function dayOfMonth(readings: readonly string[], previous: Piece | undefined): readonly string[] {
  if (!previous?.surface.endsWith("月") || !readings.includes("ツイタチ")) return readings;
  return ["ツイタチ", ...readings.filter((reading) => reading !== "ツイタチ")];
}

/** 三分の一 is a fraction, サンブンノイチ. */
const isFraction = (counter: Piece, after: readonly Piece[]): boolean =>
  counter.surface === "分" && after[0]?.surface === "の" && isNumeral(after[1]);

function readRun(
  run: readonly Piece[],
  counter: Piece | undefined,
  previous: Piece | undefined,
  after: readonly Piece[],
): Piece {
  const numeral = readNumeral(
    run
      .map((piece) => piece.surface)
      .join("")
      .normalize("NFKC"),
  );
  if (!counter) return merge(run, numeral.readings);
  if (isFraction(counter, after))
    return merge(
      [...run, counter],
      numeral.readings.map((one) => `${one}ブン`),
    );
  if (!numeral.digits) {
    const joined = numeral.readings.map((one) => joinCounter(one, counter.surface, counter.readings[0]!));
    return merge([...run, counter], joined);
  }
  const counted = readCounted(numeral.digits, counter.surface, counter.readings[0]!);
  return merge([...run, counter], dayOfMonth(counted, previous));
}

/** 何 and its like before units and a counter: 何匹 ナンビキ, 何百人 ナンビャクニン, 数千 スーセン. */
function readOpenNumber(word: Piece, units: readonly Piece[], counter: Piece | undefined): Piece {
  let number = word.surface === "何" ? "ナン" : word.readings[0]!;
  for (const unit of units) {
    const kana = unit.readings[0] ?? "";
    number = joinCounter(number, unit.surface, kana === "セン" && /ン$/u.test(number) ? "ゼン" : kana);
  }
  if (counter) number = joinCounter(number, counter.surface, counter.readings[0]!);
  return merge([word, ...units, ...(counter ? [counter] : [])], [number]);
}

/** Whether 何 or 数 counts something here; alone 何 is ナニ and 数 カズ. */
const isOpenNumber = (piece: Piece, next: Piece | undefined): boolean =>
  openNumbers.has(piece.surface) &&
  piece.detail === "数" &&
  piece.readings.length > 0 &&
  (isCounter(next) || isNumeral(next));

/**
 * Joins numerals (digits, kanji, decimals, telephone numbers) and the counter after them into one word with
 * its readings. A numeral in a form that is not understood becomes a word without a reading.
 */
export function readNumbers(pieces: readonly Piece[]): Piece[] {
  const words: Piece[] = [];
  let at = 0;
  while (at < pieces.length) {
    const piece = pieces[at]!;
    const open = isOpenNumber(piece, pieces[at + 1]) ? 1 : 0;
    const end = runEnd(pieces, at + open);
    const numerals = pieces.slice(at + open, end);
    if (open === 0 && numerals.length === 0) {
      words.push(piece);
      at += 1;
      continue;
    }
    const counter = isCounter(pieces[end]) ? pieces[end] : undefined;
    words.push(
      open === 1
        ? readOpenNumber(piece, numerals, counter)
        : readRun(numerals, counter, words.at(-1), pieces.slice(end + 1, end + 3)),
    );
    at = counter ? end + 1 : end;
  }
  return words;
}
