import type { Phone, Vowel } from "./phones.ts";

/** The kana chart: kana before a i u e o (`-` where none is in use) and the consonant the row shares. */
const rows: readonly (readonly [kana: string, consonant: Phone | null])[] = [
  ["ア イ ウ エ オ", null],
  ["- ヰ - ヱ ヲ", null],
  ["カ キ ク ケ コ", "k"],
  ["ガ ギ グ ゲ ゴ", "g"],
  ["サ スィ ス セ ソ", "s"],
  ["ザ ズィ ズ ゼ ゾ", "z"],
  ["シャ シ シュ シェ ショ", "sh"],
  ["ジャ ジ ジュ ジェ ジョ", "j"],
  ["ヂャ ヂ ヂュ ヂェ ヂョ", "j"],
  ["タ ティ トゥ テ ト", "t"],
  ["ダ ディ ドゥ デ ド", "d"],
  ["チャ チ チュ チェ チョ", "ch"],
  ["ツァ ツィ ツ ツェ ツォ", "ts"],
  ["ヅァ ヅィ ヅ ヅェ ヅォ", "z"],
  ["ナ ニ ヌ ネ ノ", "n"],
  ["ハ ヒ ホゥ ヘ ホ", "h"],
  ["ファ フィ フ フェ フォ", "f"],
  ["バ ビ ブ ベ ボ", "b"],
  ["パ ピ プ ペ ポ", "p"],
  ["ヴァ ヴィ ヴ ヴェ ヴォ", "v"],
  ["ヷ ヸ - ヹ ヺ", "v"],
  ["マ ミ ム メ モ", "m"],
  ["ヤ - ユ イェ ヨ", "y"],
  ["ラ リ ル レ ロ", "r"],
  ["ワ ウィ ウゥ ウェ ウォ", "w"],
  ["ウァ - - - -", "w"],
  ["キャ - キュ キェ キョ", "ky"],
  ["ギャ - ギュ ギェ ギョ", "gy"],
  ["テャ - テュ テェ テョ", "ty"],
  ["デャ - デュ デェ デョ", "dy"],
  ["ツャ - ツュ - ツョ", "tsy"],
  ["ニャ - ニュ ニェ ニョ", "ny"],
  ["ヒャ - ヒュ ヒェ ヒョ", "hy"],
  ["フャ - フュ - フョ", "fy"],
  ["ビャ - ビュ ビェ ビョ", "by"],
  ["ピャ - ピュ ピェ ピョ", "py"],
  ["ヴャ - ヴュ - ヴョ", "vy"],
  ["ミャ - ミュ ミェ ミョ", "my"],
  ["リャ - リュ リェ リョ", "ry"],
  ["クァ クィ - クェ クォ", "kw"],
  ["グァ グィ - グェ グォ", "gw"],
  ["クヮ - - - -", "kw"],
  ["グヮ - - - -", "gw"],
  // Small letters that follow nothing they can join, as in ヒフヘ + ェ.
  ["ァ ィ ゥ ェ ォ", null],
  ["ャ - ュ - ョ", "y"],
  ["ヮ - - - -", "w"],
  ["ヵ - - ヶ -", "k"],
];

const vowels: readonly Vowel[] = ["a", "i", "u", "e", "o"];

/** Phones of every mora written with one or two katakana; ン, ッ and ー are not in it. */
export const moraTable: ReadonlyMap<string, readonly Phone[]> = new Map(
  rows.flatMap(([kana, consonant]) =>
    kana
      .split(" ")
      .map((text, column): [string, readonly Phone[]] => [
        text,
        consonant === null ? [vowels[column]!] : [consonant, vowels[column]!],
      ])
      .filter(([text]) => text !== "-"),
  ),
);
