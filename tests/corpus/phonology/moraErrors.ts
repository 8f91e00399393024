import { kanaToMorae } from "../../../src/phonology/kana.ts";
import type { TextReading } from "../../../src/phonology/reading.ts";

/** Sound of each mora; オー and オオ are the same two morae. */
export const soundsOf = (kana: string): string[] =>
  kanaToMorae(kana).morae.map((mora) => mora.phones.join(""));

/** Edit-distance row after `own` morae more, from the row before them; rows run over the given morae. */
function extend(row: readonly number[], own: readonly string[], given: readonly string[]): number[] {
  return own.reduce<number[]>(
    (before, mora) => {
      const after = [before[0]! + 1];
      for (const [at, other] of given.entries())
        after.push(Math.min(before[at + 1]! + 1, after[at]! + 1, before[at]! + (mora === other ? 0 : 1)));
      return after;
    },
    [...row],
  );
}

const startRow = (given: readonly string[]) => [0, ...given.map((_, at) => at + 1)];

/** Morae to insert, delete or replace to get from one reading to the other (Levenshtein). */
export function moraDistance(own: readonly string[], given: readonly string[]): number {
  return extend(startRow(given), own, given).at(-1)!;
}

/** The same with the best choice among each word's readings: what is left when the recording decides. */
export function bestMoraDistance({ words, morae }: TextReading, given: readonly string[]): number {
  let row = startRow(given);
  for (const word of words) {
    const first = morae.slice(word.moraStart, word.moraEnd).map((mora) => mora.phones.join(""));
    const rows = [first, ...word.alternatives.map(soundsOf)].map((own) => extend(row, own, given));
    row = rows[0]!.map((_, at) => Math.min(...rows.map((one) => one[at]!)));
  }
  return row.at(-1)!;
}

/** Why a reading differs, as far as the sounds tell. */
export function cause(reading: TextReading, given: readonly string[]): string {
  const own = reading.morae.map((mora) => mora.phones.join(""));
  if (reading.unread.length > 0) return "no reading, reported";
  if (bestMoraDistance(reading, given) === 0) return "another reading of the same word";
  const lengths = (sounds: readonly string[]) =>
    sounds.map((sound) => sound.replace(/^i$/u, "e").replace(/^u$/u, "o"));
  if (moraDistance(lengths(own), lengths(given)) === 0) return "long vowel";
  const voiceless = (sounds: readonly string[]) =>
    sounds.map((sound) =>
      sound.replace(
        /^(?:g|z|j|d|b)/u,
        (consonant) => ({ g: "k", z: "s", j: "sh", d: "t", b: "h" })[consonant]!,
      ),
    );
  const plain = (sounds: readonly string[]) =>
    voiceless(sounds).map((sound) =>
      sound
        .replace(/^(?:ch|ts)/u, "t")
        .replace(/^(?:f|p)/u, "h")
        .replace(/^shi/u, "ti"),
    );
  return moraDistance(plain(own), plain(given)) === 0
    ? "voicing in a compound"
    : "word or name read otherwise";
}
