import { kanaToMorae } from "./kana.ts";
import type { Piece } from "./readingTypes.ts";

const voiced: Readonly<Record<string, string>> = Object.fromEntries(
  [..."カキクケコサシスセソタチツテトハヒフヘホ"].map((kana) => [kana, `${kana}\u3099`.normalize("NFC")]),
);

/** う of the volitional (飲もう, でしょう) lengthens the オ before it. */
function volitional(piece: Piece, previous: Piece | undefined): Piece {
  const isVolitional = piece.surface === "う" && piece.pos === "助動詞";
  const vowel = kanaToMorae(previous?.readings[0] ?? "").morae.at(-1)?.vowel;
  return isVolitional && vowel === "o" ? { ...piece, readings: ["ー"] } : piece;
}

/** A free-standing 々 repeats the kanji before it, voiced or not (去々年 キョキョネン, 人々 ヒトビト). */
function iteration(piece: Piece, previous: Piece | undefined): Piece {
  const repeated = previous?.readings[0];
  if (piece.surface !== "々" || !repeated || [...previous.surface].length !== 1) return piece;
  const voicedFirst = voiced[repeated[0]!];
  const readings = voicedFirst ? [repeated, voicedFirst + repeated.slice(1)] : [repeated];
  return { ...piece, readings, isBreak: false };
}

/** ー after a break or a word without a reading lengthens nothing: it is a dash. */
function dash(piece: Piece, previous: Piece | undefined): Piece {
  const nothingToLengthen = !previous || previous.isBreak || previous.readings.length === 0;
  return /^ー+$/u.test(piece.surface) && nothingToLengthen
    ? { ...piece, readings: [], isBreak: true }
    : piece;
}

/** は and へ that follow no word, or another such は or へ, are no particles: へへっと, はは。 */
function openingParticle(piece: Piece, previous: Piece | undefined): Piece {
  const letter = { は: "ハ", へ: "ヘ" }[piece.surface];
  if (piece.pos !== "助詞" || letter === undefined) return piece;
  const follows = previous !== undefined && !previous.isBreak && previous.readings.length > 0;
  const repeats = previous?.surface === piece.surface && previous.readings[0] === letter;
  return follows && !repeats ? piece : { ...piece, readings: [letter] };
}

const withFirst = (reading: string, readings: readonly string[]) => [...new Set([reading, ...readings])];

/** 何 is ナン before the sounds t, d and n of と で だ の なら て, ナニ before other particles. */
function what(piece: Piece, next: Piece | undefined): Piece {
  if (piece.surface !== "何" || piece.detail !== "代名詞") return piece;
  const isNan = /^(?:と|で|で[すし].*|だ.*|の|なら|なん?|て)$/u.test(next?.surface ?? "");
  return { ...piece, readings: isNan ? ["ナン", "ナニ"] : withFirst("ナニ", [...piece.readings, "ナン"]) };
}

/** 後 after a past verb or の is アト: 泳いだ後, 食事の後. */
function after(piece: Piece, previous: Piece | undefined): Piece {
  const pastVerb = previous?.pos === "助動詞" && /[ただ]$/u.test(previous.surface);
  const isAto = piece.surface === "後" && (pastVerb || previous?.surface === "の");
  return isAto ? { ...piece, readings: withFirst("アト", piece.readings) } : piece;
}

/** Between two numbers 〜 is カラ. */
function range(piece: Piece, previous: Piece | undefined, next: Piece | undefined): Piece {
  const between = previous?.detail === "数" && next?.detail === "数";
  return /^[～〜]$/u.test(piece.surface) && between
    ? { ...piece, readings: ["カラ"], isBreak: false }
    : piece;
}

/** A minus sign right before a number and after no other word. */
function minus(piece: Piece, previous: Piece | undefined, next: Piece | undefined): Piece {
  const opens = previous === undefined || previous.isBreak;
  const isMinus = /^[－−]$/u.test(piece.surface) && opens && next?.detail === "数";
  return isMinus ? { ...piece, readings: ["マイナス"], isBreak: false } : piece;
}

/** Readings that depend on the neighbouring word. */
export function settleReadings(pieces: readonly Piece[]): Piece[] {
  const settled: Piece[] = [];
  for (const [at, piece] of pieces.entries()) {
    const previous = settled.at(-1);
    const next = pieces[at + 1];
    const rules = [volitional, range, minus, iteration, dash, openingParticle, after];
    const byNeighbour = rules.reduce((current, rule) => rule(current, previous, next), what(piece, next));
    settled.push(byNeighbour);
  }
  return settled;
}
