import { doubtful } from "../measures/acoustics/devoicingProbability.ts";
import { kanaToMorae, type Mora } from "../phonology/kana.ts";
import { expandSelector } from "../phonology/phoneClasses.ts";
import type { ListenLabel, ListenNumber, ListenUtterance } from "./listenColumns.ts";
import { type ListenTable, labelAt } from "./readListen.ts";
import { type MoraRange, placesOf, wantedWord } from "./wordMatcher.ts";

export const listenDecisions = ["any", "devoiced", "voiced", "doubtful", "undecided", "marked"] as const;
export type ListenDecision = (typeof listenDecisions)[number];

export const listenOrders = ["corpus", "boundary", "shortest", "longest", "lowest", "highest"] as const;
export type ListenOrder = (typeof listenOrders)[number];

/** What a reader looks for; null where it does not matter. */
export interface ListenQuery {
  readonly dataset: string;
  readonly labelSet: string;
  /** As typed: kana, Latin letters or text. */
  readonly word: string;
  /** Selectors of phones, as filters have them. */
  readonly sound: string | null;
  readonly before: string | null;
  readonly after: string | null;
  readonly length: string | null;
  readonly speaker: string | null;
  readonly decision: ListenDecision;
  /** A measure between two bounds; a token without the measure is not found. */
  readonly measure: {
    readonly name: ListenNumber;
    readonly from: number | null;
    readonly to: number | null;
  } | null;
  readonly order: ListenOrder;
  /** Whether the reader has marked a row. */
  readonly isMarked: (row: number) => boolean;
}

type Test = (row: number) => boolean;

/** Rows that match, in the order that is wanted; what has no such value comes last. */
export function findTokens(
  table: ListenTable,
  utterances: readonly ListenUtterance[],
  query: ListenQuery,
): Int32Array {
  const tests = testsOf(table, utterances, query);
  const found: number[] = [];
  for (let row = 0; row < table.size; row++) if (tests.every((test) => test(row))) found.push(row);
  return sorted(Int32Array.from(found), keyOf(table, query.order));
}

function testsOf(table: ListenTable, utterances: readonly ListenUtterance[], query: ListenQuery): Test[] {
  const { dataset, labelSet, speaker, measure, decision } = query;
  const wantedPlace = Uint8Array.from(utterances, (one) =>
    one.dataset === dataset && (speaker === null || one.speaker === speaker) ? 1 : 0,
  );
  const { place } = table.counts;
  const tests: Test[] = [(row) => wantedPlace[place[row]!] === 1, labelIs(table, "labelSet", [labelSet])];
  for (const [label, selector] of [
    ["phone", query.sound],
    ["before", query.before],
    ["after", query.after],
  ] as const)
    if (selector !== null) tests.push(labelIs(table, label, expandSelector(selector)));
  if (query.length !== null) tests.push(labelIs(table, "length", [query.length]));
  if (decision !== "any") tests.push(decisionTest(table, query));
  if (measure !== null && (measure.from !== null || measure.to !== null)) {
    const column = table.numbers[measure.name];
    const [from, to] = [measure.from ?? Number.NEGATIVE_INFINITY, measure.to ?? Number.POSITIVE_INFINITY];
    tests.push((row) => column[row]! >= from && column[row]! <= to);
  }
  const wanted = wantedWord(query.word);
  if (wanted !== null) tests.push(wordTest(table, utterances, wanted));
  return tests;
}

function labelIs(table: ListenTable, label: ListenLabel, wanted: readonly string[]): Test {
  const accepted = Uint8Array.from(table.names[label], (name) => (wanted.includes(name) ? 1 : 0));
  const codes = table.codes[label];
  return (row) => accepted[codes[row]!] === 1;
}

function decisionTest({ flags, numbers }: ListenTable, { decision, isMarked }: ListenQuery): Test {
  const { devoiced } = flags;
  const probability = numbers.devoicedProbability;
  if (decision === "marked") return isMarked;
  if (decision === "devoiced") return (row) => devoiced[row] === 1;
  if (decision === "voiced") return (row) => devoiced[row] === 0;
  if (decision === "undecided") return (row) => devoiced[row] === -1;
  return (row) => probability[row]! > doubtful.from && probability[row]! < doubtful.to;
}

function wordTest(
  table: ListenTable,
  utterances: readonly ListenUtterance[],
  { text, morae }: { readonly text: string; readonly morae: readonly Mora[] | null },
): Test {
  const { place, mora } = table.counts;
  const ranges = utterances.map(({ reading }): readonly MoraRange[] =>
    morae === null || reading === null ? [] : placesOf(morae, kanaToMorae(reading).morae),
  );
  const holds = utterances.map((one) => one.text?.normalize("NFKC").includes(text) ?? false);
  return (row) => {
    const at = mora[row]!;
    if (ranges[place[row]!]!.some(([from, to]) => at >= from && at < to)) return true;
    if (!holds[place[row]!]) return false;
    const word = labelAt(table, "word", row);
    return word === null ? morae === null : word.includes(text) || (morae === null && text.includes(word));
  };
}

/** Smallest first; null for the order of the table. */
function keyOf({ numbers }: ListenTable, order: ListenOrder): ((row: number) => number) | null {
  const { durationMs, devoicedProbability, f0Hz } = numbers;
  switch (order) {
    case "corpus":
      return null;
    case "boundary":
      return (row) => Math.abs(devoicedProbability[row]! - 0.5);
    case "shortest":
      return (row) => durationMs[row]!;
    case "longest":
      return (row) => -durationMs[row]!;
    case "lowest":
      return (row) => f0Hz[row]!;
    case "highest":
      return (row) => -f0Hz[row]!;
  }
}

function sorted(rows: Int32Array, key: ((row: number) => number) | null): Int32Array {
  if (key === null) return rows;
  const keys = Float64Array.from(rows, (row) => {
    const value = key(row);
    return Number.isNaN(value) ? Number.POSITIVE_INFINITY : value;
  });
  const order = Int32Array.from(rows.keys());
  order.sort((a, b) => (keys[a] === keys[b] ? a - b : keys[a]! < keys[b]! ? -1 : 1));
  return order.map((i) => rows[i]!);
}
