import { type Basis, isEvidence } from "../../../src/basis.ts";
import type { ListenTable } from "../../../src/publish/readListen.ts";
import { flagAt, labelAt, numberAt } from "../../../src/publish/readListen.ts";
import type { CardMora, CardVoicing } from "../../../src/publish/tokenCard.ts";
import { type CardInterval, tokenCardMorae } from "../../../src/publish/tokenCardMorae.ts";
import { type ListenCorpus, stretchOf } from "./listenCorpus.ts";

/** Whether a vowel is devoiced, where anything but a rule says so. */
export function devoicedAt(table: ListenTable, row: number): boolean | null {
  return isEvidence(labelAt(table, "devoicedBasis", row) as Basis | null)
    ? flagAt(table, "devoiced", row)
    : null;
}

function voicingAt(table: ListenTable, row: number): CardVoicing {
  const devoiced = devoicedAt(table, row);
  if (devoiced === null) return "unknown";
  return devoiced ? "devoiced" : "voiced";
}

/** The morae around a sound, `around` on either side and not beyond the pauses. */
export function tokenMorae(corpus: ListenCorpus, row: number, around: number): CardMora[] {
  const { table, utterances } = corpus;
  const [from, to] = stretchOf(corpus, row);
  const intervals: CardInterval[] = [];
  for (let at = from; at < to; at++) {
    const interval = intervalAt(table, at);
    const before = intervals.at(-1);
    if (before !== undefined && interval.index > before.index + 1)
      intervals.push(pauseAfter(before, interval));
    intervals.push(interval);
  }
  const { reading } = utterances[table.counts.place[row]!]!;
  return tokenCardMorae(intervals, table.counts.index[row]!, reading, around);
}

function intervalAt(table: ListenTable, row: number): CardInterval {
  const startMs = table.numbers.startMs[row]!;
  const closureMs = numberAt(table, "closureMs", row);
  return {
    index: table.counts.index[row]!,
    phone: labelAt(table, "phone", row)!,
    length: labelAt(table, "length", row),
    mora: table.counts.mora[row]!,
    startMs,
    endMs: table.numbers.endMs[row]!,
    closureEndMs: closureMs === null ? null : startMs + closureMs,
    voicing: voicingAt(table, row),
  };
}

/** Pauses are no tokens: where one is missing between two, the row ends. */
function pauseAfter(before: CardInterval, after: CardInterval): CardInterval {
  return {
    ...{ index: before.index + 1, phone: "pause", length: null, mora: null, closureEndMs: null },
    ...{ startMs: before.endMs, endMs: after.startMs, voicing: "unknown" },
  };
}

/** How a mora's vowel was spoken; empty where it has none. */
export function voicingOf({ parts }: CardMora): CardVoicing | "" {
  return parts.find(({ voicing }) => voicing !== null)?.voicing ?? "";
}
