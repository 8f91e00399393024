import { everyNth } from "../../messages/explain.ts";
import type { TokenTable } from "../tokenTable.ts";

/** Vowels that a model takes in; more would add seconds and gigabytes, and hardly any certainty. */
export const mostVowels = 200_000;

/**
 * All rows, or, where they are more than `most`, those of every n-th recording, with a warning that says so. Whole
 * recordings, so that what belongs together stays together.
 */
export function everyNthRecording(
  { labels: { utterance } }: TokenTable,
  rows: Uint32Array,
  most = mostVowels,
): { readonly rows: Uint32Array; readonly warnings: readonly string[] } {
  if (rows.length <= most) return { rows, warnings: [] };
  const n = Math.ceil(rows.length / most);
  const place = new Map<number, number>();
  const kept = rows.filter((row) => {
    const code = utterance.codes[row]!;
    const at = place.get(code) ?? place.size;
    place.set(code, at);
    return at % n === 0;
  });
  return { rows: kept, warnings: [everyNth(n, kept.length, rows.length)] };
}
