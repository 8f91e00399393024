import type { ReadingToken, ReadingTokenizer } from "./readingTypes.ts";

/**
 * The analyser joins letters that no word holds and that are of one kind, in time that grows with the square of their
 * number: ten thousand take it a minute. No word is that long, so that such a run never reaches it.
 */
const longestRun = 100;
const longRun = new RegExp(
  [
    "[ァ-ヺー・]",
    "[ぁ-ゖー]",
    "[０-９]",
    "\\p{sc=Han}",
    "(?:(?![\\p{sc=Han}\\p{sc=Hiragana}\\p{sc=Katakana}])\\p{L})",
    "[^\\p{L}\\p{N}]",
  ]
    .map((kind) => `${kind}{${longestRun + 1},}`)
    .join("|"),
  "gu",
);

/** NUL and halves of surrogate pairs make the analyser fail. */
const unknownToAnalyser = /[\0\p{Cs}]/gu;

/** Words in order, their surfaces joining to the text; a run of letters that is too long for a word is one without a reading. */
export function tokenizeText(written: string, tokenizer: ReadingTokenizer): readonly ReadingToken[] {
  const text = written.replace(unknownToAnalyser, "\ufffd");
  const tokens: ReadingToken[] = [];
  let at = 0;
  for (const { 0: run, index } of text.matchAll(longRun)) {
    if (index > at) tokens.push(...tokenizer.tokenize(text.slice(at, index)));
    tokens.push({ ...unknown, surface_form: run });
    at = index + run.length;
  }
  if (at < text.length || text === "") tokens.push(...tokenizer.tokenize(text.slice(at)));
  return tokens;
}

const unknown = { pos: "名詞", pos_detail_1: "一般", pos_detail_2: "*", basic_form: "*" } as const;
