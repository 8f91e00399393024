import type { DatasetCard, LabelSetCard } from "../../src/datasets/types.ts";
import type { Cells } from "../../src/estimates/cells.ts";
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

/** What every page computes with. */
export interface Corpus {
  readonly cells: Cells;
  readonly sets: readonly CorpusSet[];
  readonly bands: readonly ReferenceBand[];
  /** Confidence level of every interval, 0 to 1: that of the run. */
  readonly level: number;
}

interface Site {
  readonly datasets: readonly DatasetCard[];
  readonly bands: readonly ReferenceBand[];
  readonly level: number;
}

function setsOf(cards: readonly DatasetCard[]): CorpusSet[] {
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
}): Promise<Corpus> {
  const [bytes, site] = await Promise.all([files.cells, files.site]);
  const { datasets, bands, level } = site as Site;
  return { cells: await readCells(bytes), sets: setsOf(datasets), bands, level };
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
