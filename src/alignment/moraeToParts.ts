import type { Mora } from "../phonology/kana.ts";
import { isVowel, type Phone } from "../phonology/phones.ts";
import type { GraphPart } from "./graph.ts";

/** A part of the graph with the morae it covers: `mora` the first, from 0, −1 for a pause. */
export interface MoraPart {
  readonly phone: Phone;
  readonly long: boolean;
  readonly optional: boolean;
  readonly mora: number;
  readonly morae: number;
}

/**
 * Parts of a phone graph from a reading. Two equal vowels in a row become one long part, whether or not they are a
 * long vowel to the phonologist: the sound alone holds no boundary between them. A pause may stand at every break.
 */
export function moraeToParts(morae: readonly Mora[]): (MoraPart & GraphPart)[] {
  const parts: MoraPart[] = [];
  morae.forEach((mora, m) => {
    for (const phone of mora.phones) {
      const last = parts.at(-1);
      const lengthens = mora.phones.length === 1 && isVowel(phone) && last?.phone === phone && !last.long;
      if (last && lengthens) parts[parts.length - 1] = { ...last, long: true, morae: last.morae + 1 };
      else parts.push({ phone, long: false, optional: false, mora: m, morae: 1 });
    }
    if (mora.breakAfter && m + 1 < morae.length)
      parts.push({ phone: "pause", long: false, optional: true, mora: -1, morae: 0 });
  });
  return parts;
}
