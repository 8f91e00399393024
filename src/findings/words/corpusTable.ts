import { type Basis, isEvidence } from "../../basis.ts";

/** Columns of tokens.parquet that words need, all of one length. */
export const tokenColumnsNeeded = [
  ...([
    "dataset",
    "labelSet",
    "speaker",
    "utterance",
    "index",
    "phone",
    "kind",
    "length",
    "before",
    "after",
  ] as const),
  ...(["accented", "devoiceableNeighbour", "word", "startMs", "endMs", "devoiced", "devoicedBasis"] as const),
] as const;

export type TokenTable = Readonly<Record<(typeof tokenColumnsNeeded)[number], ArrayLike<unknown>>>;

/** One labelling of one dataset: its rows of the table, in order. */
export interface LabelledCorpus {
  readonly dataset: string;
  readonly labelSet: string;
  readonly rows: Uint32Array;
  /** Vowels whose devoicing mark is evidence, and vowels whose mark a text rule wrote. */
  readonly evidence: number;
  readonly predicted: number;
}

/**
 * One labelling a dataset: the one with most evidence about devoicing, then the one with most tokens, then the first by
 * name. Two labellings of the same recordings are never pooled, and nothing is heard twice. Most evidence first.
 */
export function labelledCorpora(table: TokenTable): LabelledCorpus[] {
  const rows = new Map<
    string,
    { dataset: string; labelSet: string; rows: number[]; evidence: number; predicted: number }
  >();
  for (let i = 0; i < table.dataset.length; i++) {
    const dataset = String(table.dataset[i]);
    const labelSet = String(table.labelSet[i]);
    const key = `${dataset}\u0000${labelSet}`;
    let one = rows.get(key);
    if (one === undefined) {
      one = { dataset, labelSet, rows: [], evidence: 0, predicted: 0 };
      rows.set(key, one);
    }
    one.rows.push(i);
    if (typeof table.devoiced[i] !== "boolean") continue;
    if (isEvidence((table.devoicedBasis[i] ?? null) as Basis | null)) one.evidence++;
    else one.predicted++;
  }
  const best = new Map<string, LabelledCorpus>();
  const all = [...rows.values()].map((one) => ({ ...one, rows: Uint32Array.from(one.rows) }));
  all.sort(
    (a, b) =>
      b.evidence - a.evidence ||
      b.rows.length - a.rows.length ||
      (`${a.dataset} ${a.labelSet}` < `${b.dataset} ${b.labelSet}` ? -1 : 1),
  );
  for (const one of all) if (!best.has(one.dataset)) best.set(one.dataset, one);
  return [...best.values()];
}
