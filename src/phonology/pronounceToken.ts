import { hiraganaToKatakana } from "./katakana.ts";
import { lengthenEi } from "./lengthenEi.ts";
import type { ReadingToken, ReadingTokenizer } from "./readingTypes.ts";

const kanaOnly = /^[ぁ-ゖァ-ヺー]+$/u;
const katakanaOnly = /^[ァ-ヺー]+$/u;
const katakanaName = /^[ァ-ヺー]+(?:・+[ァ-ヺー]+)+$/u;

/** Symbols that are read aloud in one way. Common practice, no published source. */
const symbols: Readonly<Record<string, string>> = {
  "％": "パーセント",
  "℃": "ド",
  "°": "ド",
  "＆": "アンド",
  "＋": "プラス",
  "＝": "イコール",
  "＠": "アット",
  "￥": "エン",
  "＄": "ドル",
  "〒": "ユービン",
};

/** 言う is spoken ユー, in all its spellings, where its stem vowel stands alone. */
const sayVerb = (reading: string, token: ReadingToken) =>
  (token.basic_form === "言う" || token.basic_form === "いう") && /^イウ$/u.test(reading) ? "ユー" : reading;

/** ョウ and ュウ are long also in words that the dictionary does not know: チョウチョ, ミョウバン. */
const lengthenGlides = (kana: string) => kana.replace(/([ョュ])ウ/gu, "$1ー");

/** A known word in katakana keeps what the dictionary flattens (ヴ to バ) and takes its long vowels (オウム オーム). */
function katakanaWord(surface: string, known: string | undefined): string {
  const differsInLengthOnly =
    known?.length === surface.length && [...known].every((kana, at) => kana === surface[at] || kana === "ー");
  return known !== undefined && differsInLengthOnly ? known : lengthenGlides(surface);
}

/**
 * Katakana as pronounced for one dictionary word; null when the dictionary has no reading for it. Words in
 * kana without an entry are read as written; ・ inside them is a place where the phrase may pause.
 */
export function pronounceToken(token: ReadingToken, dictionary: ReadingTokenizer): string | null {
  const surface = token.surface_form;
  const known = token.pronunciation ?? token.reading;
  if (Object.hasOwn(symbols, surface)) return symbols[surface]!;
  if (katakanaOnly.test(surface)) return katakanaWord(surface, known);
  if (katakanaName.test(surface)) return surface.replace(/・+/gu, "、");
  if (known !== undefined && /^[ァ-ヺー]+$/u.test(known))
    return lengthenEi(sayVerb(known, token), token, dictionary);
  return kanaOnly.test(surface) ? lengthenGlides(hiraganaToKatakana(surface)) : null;
}

const nouns = new Set(["一般", "副詞可能", "代名詞", "サ変接続", "形容動詞語幹", "ナイ形容詞語幹"]);
const sameUse = (one: ReadingToken, other: ReadingToken) =>
  one.pos === other.pos &&
  (one.pos_detail_1 === other.pos_detail_1 ||
    (nouns.has(one.pos_detail_1) && nouns.has(other.pos_detail_1))) &&
  (one.pos_detail_1 !== "固有名詞" || one.pos_detail_2 === other.pos_detail_2);

/** Readings of a word, the analyser's choice first, then the dictionary's other readings for the same use. */
export function tokenReadings(token: ReadingToken, dictionary: ReadingTokenizer): string[] {
  const first = pronounceToken(token, dictionary);
  if (first === null) return [];
  if (kanaOnly.test(token.surface_form) || token.pos === "記号") return [first];
  const others = dictionary
    .entries(token.surface_form)
    .filter((entry) => sameUse(entry, token))
    .map((entry) => pronounceToken(entry, dictionary));
  return [...new Set([first, ...others])].filter((reading) => reading !== null);
}
