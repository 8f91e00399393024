import type { DatasetCard } from "../datasets/types.ts";

type Cited = Pick<DatasetCard, "name" | "version" | "licence" | "citation" | "attribution">;

/** What drill words owe their sources: a line a dataset, and one for the dictionary. */
export function wordCitations(cards: readonly Cited[]): string[] {
  return [
    ...cards.map(citationOf),
    "Words and readings: IPADIC 2.7.0-20070801, copyright 2000–2003 Nara Institute of Science and Technology, as shipped with kuromoji 0.1.2.",
  ];
}

function citationOf({ name, version, licence, citation, attribution }: Cited): string {
  const title = citation ?? `${name}${version === null ? "" : `, version ${version}`}.`;
  return [
    title,
    `Licence: ${licence.name}${licence.url === null ? "" : ` (${licence.url})`}.`,
    ...attribution,
  ].join(" ");
}
