import {
  CorpusCounter,
  type CountedCorpus,
  rowsOf,
  type TokenTable,
} from "../../src/findings/words/corpusTable.ts";
import { type HeardWord, WordListener } from "../../src/findings/words/corpusWords.ts";
import { DevoicingCounter, type DevoicingEvidence } from "../../src/findings/words/devoicingEvidence.ts";
import { HeardCounter, type HeardIndex } from "../../src/findings/words/heardIndex.ts";

/** The same with its rows of a table, in order. */
export interface LabelledCorpus extends CountedCorpus {
  readonly rows: Uint32Array;
}

/** The labellings of a whole table, as `CorpusCounter` chooses them. */
export function labelledCorpora(table: TokenTable): LabelledCorpus[] {
  const counter = new CorpusCounter();
  counter.add(table);
  return counter.best().map((corpus) => ({ ...corpus, rows: rowsOf(table, corpus) }));
}

/** The words said in a whole table, one after the other. */
export function heardWords(table: TokenTable, corpus: LabelledCorpus): HeardWord[] {
  const heard: HeardWord[] = [];
  const listener = new WordListener(corpus, (word) => heard.push(word));
  listener.add(table, corpus.rows);
  listener.finish();
  return heard;
}

/** The evidence of a whole table; marks predicted from text are counted apart and used for nothing. */
export function devoicingEvidence(table: TokenTable, corpus: LabelledCorpus): DevoicingEvidence {
  const counter = new DevoicingCounter();
  counter.add(table, corpus.rows);
  return counter.evidence(corpus);
}

export function indexHeard(heard: readonly HeardWord[]): HeardIndex {
  const counter = new HeardCounter();
  for (const one of heard) counter.add(one);
  return counter.index;
}
