import { kanaToMorae, type Mora } from "./kana.ts";

export interface AccentedReading {
  /** The reading without its marks; `、` where it pauses. */
  readonly kana: string;
  readonly morae: Mora[];
  /** For each mora, whether it is the accent nucleus: the last high mora before the fall. */
  readonly accented: boolean[];
  /** For each mora, the number of its accent phrase, from 0. */
  readonly accentPhrase: number[];
}

/**
 * Reads kana with accent marks: `[` pitch rises before the next mora, `]` it falls after the last one,
 * `#` an accent phrase ends, `_` a pause, `^ $ ?` the edges of the utterance. A phrase without a fall has no
 * nucleus; the rise carries nothing that the fall does not.
 */
export function readAccent(marked: string): AccentedReading {
  let kana = "";
  const falls: number[] = [];
  const edges: number[] = [];
  for (const letter of marked) {
    if (letter === "]") falls.push(kana.length);
    else if (letter === "#") edges.push(kana.length);
    else if (letter === "_" || letter === "?") {
      edges.push(kana.length);
      kana += "、";
    } else if (!/[[^$]/u.test(letter)) kana += letter;
  }
  const moraeBefore = (length: number) => kanaToMorae(kana.slice(0, length)).morae.length;
  const morae = kanaToMorae(kana).morae;
  const accented = morae.map(() => false);
  for (const fall of falls) {
    const nucleus = moraeBefore(fall) - 1;
    if (nucleus >= 0) accented[nucleus] = true;
  }
  const firstMorae = new Set(edges.map(moraeBefore));
  let phrase = 0;
  const accentPhrase = morae.map((_, at) => {
    if (at > 0 && firstMorae.has(at)) phrase += 1;
    return phrase;
  });
  return { kana, morae, accented, accentPhrase };
}
