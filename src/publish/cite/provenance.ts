import type { DatasetCard } from "../../datasets/types.ts";
import type { Run } from "../readResults.ts";
import { setName } from "../setName.ts";

/** What a citation needs to know of a dataset. */
export type SourceDataset = Pick<
  DatasetCard,
  "id" | "name" | "version" | "licence" | "citation" | "homePage" | "notice"
>;

/** Where the numbers of a site come from; every page carries it, so that what is taken away from it can say so. */
export interface Provenance {
  readonly software: { readonly name: string; readonly version: string };
  /** Time of the run, ISO 8601. */
  readonly resultsOf: string;
  readonly datasets: readonly SourceDataset[];
  /** Names of the label sets by `dataset/labelSet`. */
  readonly setNames: Readonly<Record<string, string>>;
}

/** Id of the element that holds the provenance of a page. */
export const provenanceElement = "provenance";

export function provenanceOf({ software, createdAt, datasets }: Run): Provenance {
  const keys = datasets.flatMap((card) =>
    card.labelSets.map(({ id }) => [`${card.id}/${id}`, setName(datasets, card.id, id)] as const),
  );
  return {
    software,
    resultsOf: createdAt,
    datasets: datasets.map(({ id, name, version, licence, citation, homePage, notice }) => ({
      ...{ id, name, version, licence, citation, homePage, notice },
    })),
    setNames: Object.fromEntries(keys),
  };
}

/** The provenance as an element of a page's head: data, never run; no text of a dataset can end it. */
export function provenanceScript(run: Run): string {
  const json = JSON.stringify(provenanceOf(run)).replaceAll("<", "\\u003c");
  return `<script type="application/json" id="${provenanceElement}">${json}</script>`;
}
