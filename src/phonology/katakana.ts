/** One katakana letter (or what stood there instead) and its place in the text it came from. */
export interface KatakanaLetter {
  readonly text: string;
  /** UTF-16 offset in the original text. */
  readonly index: number;
}

const voicingMarks = /[\u3099\u309a\uff9e\uff9f\u309b\u309c]/u;
const combining = { "\u309b": "\u3099", "\u309c": "\u309a" } as const;
const iterationMarks = /[ゝゞヽヾ]/u;

/** Letters of a text, each with the voicing mark that follows it. */
export const letterClusters = (text: string) =>
  text.matchAll(/[\s\S][\u3099\u309a\uff9e\uff9f\u309b\u309c]?/gu);

/** Numbers in circles and brackets, which NFKC would join with the digits beside them. */
const enclosedNumber = /[\u2460-\u249b\u24ea-\u24ff\u2776-\u2793]/u;

/** NFKC of one letter with its voicing mark; the free-standing marks ゛ ゜ join the letter before. */
export function compose(cluster: string): string {
  if (enclosedNumber.test(cluster)) return cluster;
  const joined = [...cluster]
    .map((letter, at) => (at > 0 && letter in combining ? combining[letter as "\u309b"] : letter))
    .join("");
  return joined.normalize("NFKC");
}

/** Hiragana ぁ–ゖ and the marks ゝゞ to katakana; everything else stays. */
export function hiraganaToKatakana(text: string): string {
  return text.replace(/[ぁ-ゖゝゞ]/gu, (letter) => String.fromCodePoint(letter.codePointAt(0)! + 0x60));
}

function repeat(mark: string, previous: string): string {
  const bare = previous.normalize("NFD").replace(voicingMarks, "");
  return `${bare}${mark === "ヾ" ? "\u3099" : ""}`.normalize("NFC");
}

/**
 * The letters of a text in full-width katakana: NFKC, half-width kana with their voicing marks joined,
 * hiragana turned to katakana, iteration marks ゝ ゞ ヽ ヾ written out. Other letters are kept as they are.
 */
export function toKatakanaLetters(text: string): KatakanaLetter[] {
  const letters: KatakanaLetter[] = [];
  for (const { 0: cluster, index } of letterClusters(text)) {
    for (const letter of compose(cluster)) {
      const katakana = hiraganaToKatakana(letter);
      const previous = letters.at(-1)?.text;
      const repeats = iterationMarks.test(katakana) && previous !== undefined && /[ァ-ヺ]/u.test(previous);
      letters.push({ text: repeats ? repeat(katakana, previous) : katakana, index });
    }
  }
  return letters;
}
