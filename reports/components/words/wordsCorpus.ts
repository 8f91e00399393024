import type { DatasetCard } from "../../../src/datasets/types.ts";
import type { DevoicingTable } from "../../../src/findings/words/devoicingTable.ts";
import { type OpenCandidate, openListing } from "../../../src/findings/words/openListing.ts";
import { unpackListing } from "../../../src/findings/words/packWords.ts";
import type { Target } from "../../../src/findings/words/targets.ts";
import type { WordsData } from "../../../src/publish/wordsSource.ts";
import { type AddressOf, heardWhere } from "./heardWhere.ts";

/** What the page of drill words works with. */
export interface WordsCorpus {
  readonly candidates: readonly OpenCandidate[];
  readonly byId: ReadonlyMap<string, OpenCandidate>;
  readonly found: Readonly<Partial<Record<Target, number>>>;
  readonly devoicing: DevoicingTable;
  readonly addressOf: AddressOf;
  readonly silent: readonly string[];
  readonly citations: readonly string[];
  readonly notices: readonly string[];
  readonly software: string;
}

/** Loads the candidates; null for results without drill words. */
export async function loadWords(files: {
  readonly words: Promise<unknown>;
  /** Where it lies tells where the site begins. */
  readonly site: { readonly href: string; readonly json: () => Promise<unknown> };
}): Promise<WordsCorpus | null> {
  const [data, site] = await Promise.all([files.words as Promise<WordsData | null>, files.site.json()]);
  if (data === null) return null;
  const { datasets } = site as { readonly datasets: readonly DatasetCard[] };
  const candidates = openListing(unpackListing(data), data.devoicing, data.lengths);
  return {
    candidates,
    byId: new Map(candidates.map((candidate) => [candidate.id, candidate])),
    ...{ found: data.found, devoicing: data.devoicing, silent: data.silent },
    addressOf: heardWhere(data.audio, files.site.href),
    citations: data.citations,
    notices: datasets.flatMap(({ notice }) => notice ?? []),
    software: data.software,
  };
}
