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

/** One labelling of one dataset, counted. */
export interface CountedCorpus {
  readonly dataset: string;
  readonly labelSet: string;
  readonly tokens: number;
  /** Vowels whose devoicing mark is evidence, and vowels whose mark a text rule wrote. */
  readonly evidence: number;
  readonly predicted: number;
}

/** Columns that labellings are counted by. */
export const corpusColumnsNeeded = ["dataset", "labelSet", "devoiced", "devoicedBasis"] as const;
type CorpusColumns = Pick<TokenTable, (typeof corpusColumnsNeeded)[number]>;

/** Counts labellings in a table that comes in pieces. */
export class CorpusCounter {
  readonly #counts = new Map<
    string,
    { dataset: string; labelSet: string; tokens: number; evidence: number; predicted: number }
  >();

  add({ dataset, labelSet, devoiced, devoicedBasis }: CorpusColumns): void {
    for (let i = 0; i < dataset.length; i++) {
      const key = `${dataset[i]}\u0000${labelSet[i]}`;
      let one = this.#counts.get(key);
      if (one === undefined) {
        const names = { dataset: String(dataset[i]), labelSet: String(labelSet[i]) };
        one = { ...names, tokens: 0, evidence: 0, predicted: 0 };
        this.#counts.set(key, one);
      }
      one.tokens++;
      if (typeof devoiced[i] !== "boolean") continue;
      if (isEvidence((devoicedBasis[i] ?? null) as Basis | null)) one.evidence++;
      else one.predicted++;
    }
  }

  /**
   * One labelling a dataset: the one with most evidence about devoicing, then the one with most tokens, then the first
   * by name. Two labellings of the same recordings are never pooled, and nothing is heard twice. Most evidence first.
   */
  best(): CountedCorpus[] {
    const best = new Map<string, CountedCorpus>();
    const all = [...this.#counts.values()].sort(
      (a, b) =>
        b.evidence - a.evidence ||
        b.tokens - a.tokens ||
        (`${a.dataset} ${a.labelSet}` < `${b.dataset} ${b.labelSet}` ? -1 : 1),
    );
    for (const one of all) if (!best.has(one.dataset)) best.set(one.dataset, one);
    return [...best.values()];
  }
}

/** Rows of a table, or of a piece of it, that belong to a labelling. */
export function rowsOf(
  { dataset, labelSet }: Pick<TokenTable, "dataset" | "labelSet">,
  corpus: CountedCorpus,
): Uint32Array {
  const rows: number[] = [];
  for (let i = 0; i < dataset.length; i++)
    if (dataset[i] === corpus.dataset && labelSet[i] === corpus.labelSet) rows.push(i);
  return Uint32Array.from(rows);
}
