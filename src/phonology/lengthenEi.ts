import { hiraganaToKatakana } from "./katakana.ts";
import type { ReadingToken, ReadingTokenizer } from "./readingTypes.ts";

const ei = /[エケゲセゼテデネヘベペメレェ]イ/gu;
const kana = /^[ぁ-ゖー]+$/u;

/** Whether the written word can be cut so that its parts are words read as `head` and `tail`. */
function partsAt(surface: string, head: string, tail: string, dictionary: ReadingTokenizer): boolean {
  const reads = (part: string, reading: string) =>
    (kana.test(part) && hiraganaToKatakana(part) === reading) ||
    dictionary
      .entries(part)
      .some(
        (entry) => entry.pos !== "記号" && (entry.reading === reading || entry.pronunciation === reading),
      );
  for (let cut = 1; cut < surface.length; cut++) {
    const tailIsKana = kana.test(surface.slice(cut)) && hiraganaToKatakana(surface.slice(cut)) === tail;
    if (tailIsKana || (reads(surface.slice(0, cut), head) && reads(surface.slice(cut), tail))) return true;
  }
  return false;
}

/**
 * エイ inside one morpheme becomes エー (先生 センセー), across a boundary it stays (毛糸 ケイト, 手入れ テイレ,
 * 招い マネイ). A boundary is seen where the written word splits into two dictionary words read as the parts.
 * Verbs and adjectives written in kana, and loanwords, keep エイ.
 */
export function lengthenEi(reading: string, token: ReadingToken, dictionary: ReadingTokenizer): string {
  const { pos } = token;
  const surface = token.surface_form.replace(/(.)々/gu, "$1$1");
  const inflects = pos === "動詞" || pos === "形容詞";
  if (/[ァ-ヺ]/u.test(surface) || (inflects && kana.test(surface))) return reading;
  return reading.replace(ei, (pair, at: number) => {
    const head = reading.slice(0, at + 1);
    const tail = reading.slice(at + 1);
    const split = !kana.test(surface) && partsAt(surface, head, tail, dictionary);
    return split ? pair : `${pair[0]}ー`;
  });
}
