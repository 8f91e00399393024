import { isPause, isPhone, phoneTable } from "../../phonology/phones.ts";
import type { DataColumn } from "../../statistics/models/term.ts";
import type { TokenTable } from "../tokenTable.ts";
import { centred, renamed } from "./modelColumns.ts";

/** Occurrences of a word per million; null when the list does not hold it. */
export type WordFrequency = (word: string) => number | null;

const hRow = ["h", "hy", "f", "fy"];

/**
 * Terms of the devoicing model over the chosen rows. The first level of each is the reference: /i/, a stop before and
 * after, unaccented, inside its stretch, no devoiceable neighbour. The h-row (ç, ɸ, h) after the vowel stands apart from
 * other fricatives, and the closure of a geminate from single consonants.
 */
export function devoicingColumns(
  { labels, numbers }: TokenTable,
  rows: Uint32Array,
  wordFrequency?: WordFrequency,
): Record<string, DataColumn> {
  const columns: Record<string, DataColumn> = {
    vowel: renamed(labels.phone, rows, ["i", "u"]),
    before: renamed(labels.before, rows, ["stop", "affricate", "fricative"], mannerOf),
    after: renamed(
      labels.after,
      rows,
      ["stop", "affricate", "fricative", "h-row", "geminate", "pause"],
      (phone) => (hRow.includes(phone) ? "h-row" : mannerOf(phone)),
    ),
    accented: renamed(labels.accented, rows, ["false", "true"]),
    position: placeColumn(labels.position, rows),
    devoiceableNeighbour: renamed(labels.devoiceableNeighbour, rows, ["false", "true"]),
    speechRate: centred(numbers.speechRateMoraePerSec, rows),
  };
  if (wordFrequency) {
    const logs = labels.word.labels.map((word) => {
      const perMillion = word === null ? null : wordFrequency(word);
      return perMillion !== null && perMillion > 0 ? Math.log10(perMillion) : Number.NaN;
    });
    const ofRow = Float64Array.from(labels.word.codes, (code) => logs[code]!);
    columns.wordFrequency = centred(ofRow, rows);
  }
  return columns;
}

/** First mora of its stretch or a later one; the last is told by the pause after it. */
export function placeColumn(position: TokenTable["labels"]["position"], rows: Uint32Array): DataColumn {
  return renamed(position, rows, ["later", "initial"], (place) =>
    place === "initial" || place === "only" ? "initial" : "later",
  );
}

function mannerOf(phone: string): string | null {
  if (isPause(phone)) return "pause";
  return isPhone(phone) ? phoneTable[phone].manner : null;
}
