import { interfaceText } from "../../interface/interfaceText.ts";
import { type CitedView, softwareTitle } from "./cslItems.ts";
import type { Provenance, SourceDataset } from "./provenance.ts";

/** A dataset with version and licence in a few words. */
export function datasetWords({ name, version, licence }: SourceDataset): string {
  const words = interfaceText().cite;
  return [name, version && words.version(version), licence.name].filter(Boolean).join(", ");
}

/** Sentences that must stand wherever numbers of these datasets are shown. */
function noticesOf({ datasets }: CitedView): string[] {
  return [...new Set(datasets.flatMap(({ notice }) => (notice === null ? [] : [notice])))];
}

/** Where a picture's numbers come from, in a line that fits below it. */
export function sourceLine({ software, resultsOf }: Provenance, view: CitedView): string {
  const words = interfaceText().cite;
  const data = words.data(view.datasets.map(datasetWords).join("; "));
  return `${[
    data,
    view.setName !== null && !data.includes(view.setName) && view.setName,
    words.counted(view.filter),
    `${softwareTitle} ${software.version}, ${words.resultsOf(resultsOf.slice(0, 10))}`,
  ]
    .filter(Boolean)
    .join(". ")}. ${noticesOf(view).join(" ")}`.trimEnd();
}

/** A picture cited as running text. */
export function citationText(provenance: Provenance, view: CitedView): string {
  const words = interfaceText().cite;
  const quoted = `“${view.finding.replace(/[.。]$/, "")}.” ${words.figureCalled(view.figure)}.`;
  const own = view.datasets.flatMap(({ citation }) => (citation === null ? [] : [citation]));
  return [
    quoted,
    sourceLine(provenance, view),
    ...(view.address === null ? [] : [`${view.address} (${words.seenOn(view.seenOn.slice(0, 10))}).`]),
    ...new Set(own),
  ].join(" ");
}
