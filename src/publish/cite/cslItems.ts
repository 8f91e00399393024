import { interfaceText } from "../../interface/interfaceText.ts";
import type { Provenance, SourceDataset } from "./provenance.ts";

interface CslDate {
  readonly "date-parts": readonly (readonly number[])[];
}

/** One entry of CSL-JSON, of the kinds and fields that this project cites with. */
export interface CslItem {
  readonly id: string;
  readonly type: "dataset" | "software" | "figure";
  readonly title: string;
  readonly "container-title"?: string;
  readonly version?: string;
  readonly issued?: CslDate;
  readonly accessed?: CslDate;
  readonly URL?: string;
  readonly note?: string;
}

/** What a reader looks at when citing: a figure with its cut, at its address. */
export interface CitedView {
  /** Id of the figure, stable from build to build. */
  readonly figure: string;
  /** What the figure shows, as a sentence. */
  readonly finding: string;
  readonly datasets: readonly SourceDataset[];
  /** Dataset and way of labelling as the pages name it; null where the view holds several. */
  readonly setName: string | null;
  /** What was counted, in words. */
  readonly filter: string;
  /** How the numbers came about, in words; empty where nothing is said. */
  readonly basis: string;
  /** Where others find it; null where the address is of this machine only. */
  readonly address: string | null;
  /** Day on which the reader looks, ISO 8601. */
  readonly seenOn: string;
}

export const softwareTitle = "Morascope";

/** The day of an ISO 8601 time as CSL writes it. */
export function cslDate(time: string): CslDate {
  return { "date-parts": [time.slice(0, 10).split("-").map(Number)] };
}

function sentences(...parts: readonly (string | null)[]): string {
  return parts
    .filter((part) => part !== null && part !== "")
    .map((part) => (/[.!?。]$/.test(part!) ? part : `${part}.`))
    .join(" ");
}

export function datasetItem({
  id,
  name,
  version,
  licence,
  citation,
  homePage,
  notice,
}: SourceDataset): CslItem {
  const { licenceIs } = interfaceText().cite;
  return {
    id,
    type: "dataset",
    title: name,
    ...(version === null ? {} : { version }),
    ...(homePage === null ? {} : { URL: homePage }),
    note: sentences(citation, licenceIs(licence.name, licence.url), notice),
  };
}

export function softwareItem({ software }: Provenance): CslItem {
  const { softwareNote } = interfaceText().cite;
  return {
    id: software.name,
    type: "software",
    title: softwareTitle,
    version: software.version,
    note: softwareNote,
  };
}

const ofDay = ({ resultsOf }: Provenance) => resultsOf.slice(0, 10);

/** The results of a run as a whole; `address` where they can be looked at, if it is known. */
export function resultsItem(provenance: Provenance, address: string | null = null): CslItem {
  const { resultsTitle, computedWith } = interfaceText().cite;
  return {
    id: `${provenance.software.name}-results-${ofDay(provenance)}`,
    type: "dataset",
    title: resultsTitle(provenance.datasets.map(({ name }) => name)),
    version: ofDay(provenance),
    issued: cslDate(provenance.resultsOf),
    ...(address === null ? {} : { URL: address }),
    note: computedWith(softwareTitle, provenance.software.version),
  };
}

export function figureItem(provenance: Provenance, view: CitedView): CslItem {
  const { computedWith, counted, figureCalled, resultsTitle } = interfaceText().cite;
  return {
    id: `${provenance.software.name}-${view.figure}`,
    type: "figure",
    title: view.finding,
    "container-title": resultsTitle(view.datasets.map(({ name }) => name)),
    version: ofDay(provenance),
    issued: cslDate(provenance.resultsOf),
    ...(view.address === null ? {} : { accessed: cslDate(view.seenOn) }),
    ...(view.address === null ? {} : { URL: view.address }),
    note: sentences(
      figureCalled(view.figure),
      view.setName,
      counted(view.filter),
      view.basis,
      computedWith(softwareTitle, provenance.software.version),
    ),
  };
}

/** Everything to cite with a figure: the figure, its datasets, the software. */
export function viewItems(provenance: Provenance, view: CitedView): CslItem[] {
  return [figureItem(provenance, view), ...view.datasets.map(datasetItem), softwareItem(provenance)];
}

/** Everything to cite with a whole site: the results, their datasets, the software. */
export function siteItems(provenance: Provenance, address: string | null = null): CslItem[] {
  return [
    resultsItem(provenance, address),
    ...provenance.datasets.map(datasetItem),
    softwareItem(provenance),
  ];
}

/** Entries as a CSL-JSON file; dates on one line. */
export function cslJson(items: readonly CslItem[]): string {
  const dates = /\[\s+\[\s+([\d,\s]+?)\s+\]\s+\]/g;
  const json = JSON.stringify(items, null, 2);
  return `${json.replace(dates, (_, parts: string) => `[[${parts.replace(/\s+/g, " ")}]]`)}\n`;
}
