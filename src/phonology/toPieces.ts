import { tokenReadings } from "./pronounceToken.ts";
import type { Piece, ReadingToken, ReadingTokenizer } from "./readingTypes.ts";

const separators = /^[\p{White_Space}\p{P}～〜♪♡☆★…]+$/u;
const symbolRun = /^[^\p{L}\p{N}]{2,}$/u;

/** The analyser joins unknown symbols (°、); each is a piece of its own here. */
function splitSymbols(token: ReadingToken): ReadingToken[] {
  if (token.reading !== undefined || !symbolRun.test(token.surface_form)) return [token];
  return [...token.surface_form].map((symbol) => ({ ...token, surface_form: symbol }));
}

/** The analyser's words with their offsets and possible readings. */
export function toPieces(tokens: readonly ReadingToken[], tokenizer: ReadingTokenizer): Piece[] {
  let start = 0;
  return tokens.flatMap(splitSymbols).map((token) => {
    const { surface_form: surface, pos, pos_detail_1: detail, pos_detail_2: detail2 } = token;
    const end = start + surface.length;
    const readings = tokenReadings(token, tokenizer);
    const isBreak = readings.length === 0 && separators.test(surface);
    const piece = { start, end, surface, pos, detail, detail2, readings, isBreak, accent: null };
    start = end;
    return piece;
  });
}
