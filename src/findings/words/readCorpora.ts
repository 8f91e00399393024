import {
  CorpusCounter,
  type CountedCorpus,
  corpusColumnsNeeded,
  rowsOf,
  type TokenTable,
  tokenColumnsNeeded,
} from "./corpusTable.ts";
import { WordListener } from "./corpusWords.ts";
import { DevoicingCounter, type DevoicingEvidence } from "./devoicingEvidence.ts";
import { HeardCounter, type HeardIndex } from "./heardIndex.ts";

/** What words need to know of the corpora in a table of tokens. */
export interface Corpora {
  /** One labelling a dataset, most evidence first. */
  readonly all: readonly CountedCorpus[];
  /** The one whose evidence counts; null when there is none. */
  readonly chosen: CountedCorpus | null;
  readonly devoicing: DevoicingEvidence | null;
  /** Words heard in all datasets. */
  readonly heard: HeardIndex;
}

/** Gives these columns of tokens.parquet, piece by piece, from the start each time it is called. */
export type ReadPieces = (columns: readonly string[]) => AsyncIterable<Partial<TokenTable>>;

/**
 * Reads the tokens twice, a piece at a time, so that memory holds words and environments and not the corpus. `dataset`:
 * whose evidence counts; where it is not given or not there, the one with most evidence.
 */
export async function readCorpora(pieces: ReadPieces, dataset?: string): Promise<Corpora> {
  const counter = new CorpusCounter();
  for await (const piece of pieces(corpusColumnsNeeded)) counter.add(piece as TokenTable);
  const all = counter.best();
  const chosen = all.find((corpus) => corpus.dataset === dataset) ?? all[0] ?? null;
  const devoicing = new DevoicingCounter();
  const ears = all.map((corpus) => {
    const words = new HeardCounter();
    return { corpus, words, listener: new WordListener(corpus, (word) => words.add(word)) };
  });
  for await (const piece of pieces(tokenColumnsNeeded)) {
    const table = piece as TokenTable;
    for (const { corpus, listener } of ears) {
      const rows = rowsOf(table, corpus);
      listener.add(table, rows);
      if (corpus === chosen) devoicing.add(table, rows);
    }
  }
  for (const { listener } of ears) listener.finish();
  return {
    all,
    chosen,
    devoicing: chosen === null ? null : devoicing.evidence(chosen),
    heard: HeardCounter.joined(ears.map(({ words }) => words)),
  };
}
