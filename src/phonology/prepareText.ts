import { compose, letterClusters } from "./katakana.ts";

export interface PreparedText {
  readonly text: string;
  /** UTF-16 offset in the original of each UTF-16 unit of `text`, and one more for its end. */
  readonly indexOf: readonly number[];
}

/** The full-width form, which the dictionary writes Latin letters, digits and symbols in. */
const fullWidth = (letter: string) =>
  /[!-~]/u.test(letter) ? String.fromCodePoint(letter.codePointAt(0)! + 0xfee0) : letter;

/** NFKC with Latin, digits and ASCII symbols in full width, half-width kana joined with their voicing marks. */
export function prepareText(original: string): PreparedText {
  let text = "";
  const indexOf: number[] = [];
  for (const { 0: cluster, index } of letterClusters(original)) {
    const prepared = [...compose(cluster)].map(fullWidth).join("");
    for (let unit = 0; unit < prepared.length; unit++) indexOf.push(index);
    text += prepared;
  }
  indexOf.push(original.length);
  return { text, indexOf };
}
