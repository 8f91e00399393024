import { ipaOf } from "../findings/soundNames.ts";
import { kanaToMorae } from "../phonology/kana.ts";
import { isVowel } from "../phonology/phones.ts";
import type { CardMora, CardPart, CardVoicing } from "./tokenCard.ts";

/** A row of the intervals of one utterance, with what is known of its voice. */
export interface CardInterval {
  readonly index: number;
  readonly phone: string;
  readonly length: string | null;
  /** First mora of the phone; null for a pause. */
  readonly mora: number | null;
  readonly startMs: number;
  readonly endMs: number;
  readonly closureEndMs: number | null;
  readonly voicing: CardVoicing;
}

/** Morae shown before and after the token's unless told otherwise. */
export const moraeAround = 4;

interface Group {
  readonly mora: number;
  readonly parts: CardPart[];
}

/**
 * The token's mora and up to `around` on either side, not beyond the pauses around them. A geminate's closure is a mora of
 * its own; a long vowel and its mora are drawn as one. `reading`: null where it does not fit the phones.
 */
export function tokenCardMorae(
  intervals: readonly CardInterval[],
  index: number,
  reading: string | null,
  around: number = moraeAround,
): CardMora[] {
  const groups = groupByMora(intervals, index);
  const at = groups.findIndex((group) => group?.parts.some(({ own }) => own));
  let first = at;
  while (first > 0 && at - first < around && groups[first - 1]) first--;
  let last = at;
  while (last < groups.length - 1 && last - at < around && groups[last + 1]) last++;
  const kana = reading === null ? null : kanaToMorae(reading).morae.map((mora) => mora.kana);
  const moraAfter = (place: number) =>
    groups.slice(place + 1).find((group) => group !== null)?.mora ?? kana?.length ?? 0;
  const shown: CardMora[] = [];
  for (let place = first; place <= last; place++) {
    const group = groups[place];
    if (group) shown.push(toMora(group, kana?.slice(group.mora, moraAfter(place)) ?? []));
  }
  return shown;
}

function toMora({ parts }: Group, kana: readonly string[]): CardMora {
  return {
    kana: kana.length > 0 ? kana.join("") : parts.map(({ phone }) => ipaOf(phone)).join(""),
    inKana: kana.length > 0,
    startMs: parts[0]!.startMs,
    endMs: parts.at(-1)!.endMs,
    parts,
  };
}

/** Null stands for a pause. */
function groupByMora(intervals: readonly CardInterval[], index: number): (Group | null)[] {
  const groups: (Group | null)[] = [];
  const add = (mora: number, part: CardPart) => {
    const last = groups.at(-1);
    if (last?.mora === mora) last.parts.push(part);
    else groups.push({ mora, parts: [part] });
  };
  for (const interval of intervals) {
    const { mora, phone, startMs, endMs, closureEndMs } = interval;
    if (mora === null) {
      groups.push(null);
      continue;
    }
    const own = interval.index === index;
    const voicing = isVowel(phone) ? interval.voicing : null;
    if (closureEndMs === null) add(mora, { phone, startMs, endMs, voicing, own });
    else {
      add(mora, { phone: "cl", startMs, endMs: closureEndMs, voicing, own });
      add(mora + 1, { phone, startMs: closureEndMs, endMs, voicing, own });
    }
  }
  return groups;
}
