import type { DatasetCard, LabelSetCard } from "../../src/datasets/types.ts";
import type { Cells } from "../../src/estimates/cells.ts";
import type { DevoicingError } from "../../src/estimates/devoicingError.ts";
import type { DevoicingData } from "../../src/publish/pageData.ts";
import { readCells } from "../../src/publish/readCells.ts";
import type { ReferenceBand } from "../../src/publish/referenceBands.ts";
import { setName } from "../../src/publish/setName.ts";

/** One way of labelling one dataset; numbers are never added up across these. */
export interface CorpusSet {
  /** `dataset/labelSet`, as it stands in the address. */
  readonly key: string;
  readonly dataset: string;
  readonly labelSet: string;
  readonly name: string;
  readonly card: DatasetCard;
  readonly labels: LabelSetCard;
}

/** The sets a page can choose from. */
export interface Sets {
  readonly sets: readonly CorpusSet[];
  /** Confidence level of every interval, 0 to 1: that of the run. */
  readonly level: number;
}

/** What the pages compute with that cut the corpus. */
export interface Corpus extends Sets {
  readonly cells: Cells;
  readonly bands: readonly ReferenceBand[];
  /** How often measured devoicing errs; null where it is not known or the page does not load it. */
  readonly error: DevoicingError | null;
}

/** What a page shows that needs no cells, `data` as `pageData.ts` wrote it. */
export interface PageData<T> extends Sets {
  readonly data: T;
}

interface Site {
  readonly datasets: readonly DatasetCard[];
  readonly bands: readonly ReferenceBand[];
  readonly level: number;
}

/** The label sets of some datasets, in their order. */
export function setsOf(cards: readonly DatasetCard[]): CorpusSet[] {
  return cards.flatMap((card) =>
    card.labelSets.map((labels) => ({
      key: `${card.id}/${labels.id}`,
      dataset: card.id,
      labelSet: labels.id,
      name: setName(cards, card.id, labels.id),
      card,
      labels,
    })),
  );
}

/** Loads the cells into typed arrays, once a page. */
export async function loadCorpus(files: {
  readonly cells: Promise<ArrayBuffer>;
  readonly site: Promise<unknown>;
  readonly devoicing?: Promise<unknown>;
}): Promise<Corpus> {
  const [bytes, site, devoicing] = await Promise.all([files.cells, files.site, files.devoicing]);
  const { datasets, bands, level } = site as Site;
  const { error = null } = (devoicing ?? {}) as Partial<DevoicingData>;
  return { cells: await readCells(bytes), sets: setsOf(datasets), bands, level, error };
}

/** Loads the sets and one file of the site. */
export async function loadPage<T>(files: {
  readonly site: Promise<unknown>;
  readonly data: Promise<unknown>;
}): Promise<PageData<T>> {
  const [site, data] = await Promise.all([files.site, files.data]);
  const { datasets, level } = site as Site;
  return { sets: setsOf(datasets), level, data: data as T };
}

/** What belongs to the chosen set among entries of several. */
export function ofSet<T extends { readonly dataset: string; readonly labelSet: string }>(
  entries: readonly T[],
  { dataset, labelSet }: CorpusSet,
): T | undefined {
  return entries.find((entry) => entry.dataset === dataset && entry.labelSet === labelSet);
}

/** Key of the set that most speakers answer for among those with an answer; the first set of all where none has one. */
export function mostTellingSet(
  { sets }: Sets,
  answers: readonly { readonly dataset: string; readonly labelSet: string }[],
): string {
  const speakers = (set: CorpusSet) => (ofSet(answers, set) === undefined ? -1 : set.card.speakers);
  return [...sets].sort((a, b) => speakers(b) - speakers(a))[0]!.key;
}

/** Labels of a column that occur in a set, in the column's order. */
export function labelsIn({ cells }: Corpus, set: CorpusSet, dimension: keyof Cells["dimensions"]): string[] {
  const { codes, labels } = cells.dimensions[dimension];
  const dataset = cells.dimensions.dataset;
  const labelSet = cells.dimensions.labelSet;
  const wantedDataset = dataset.labels.indexOf(set.dataset);
  const wantedLabelSet = labelSet.labels.indexOf(set.labelSet);
  const seen = new Uint8Array(labels.length);
  for (let i = 0; i < cells.size; i++) {
    if (dataset.codes[i] === wantedDataset && labelSet.codes[i] === wantedLabelSet) seen[codes[i]!] = 1;
  }
  return labels.filter((label, code): label is string => seen[code] === 1 && label !== null);
}
