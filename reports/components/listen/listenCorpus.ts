import type { DatasetCard } from "../../../src/datasets/types.ts";
import type { ListenDataset, ListenList, ListenUtterance } from "../../../src/publish/listenColumns.ts";
import { type ListenTable, labelAt, readListen } from "../../../src/publish/readListen.ts";
import { type CorpusSet, setsOf } from "../corpus.ts";

/** Single sounds to look at, and where they can be heard. */
export interface ListenCorpus {
  readonly table: ListenTable;
  readonly utterances: readonly ListenUtterance[];
  readonly datasets: readonly ListenDataset[];
  readonly sets: readonly CorpusSet[];
  /** Whether readers corrected vowels of these results. */
  readonly corrected: boolean;
  /** Whether the reader's own machine serves this page, with all sounds and, of these datasets, all recordings. */
  readonly local: LocalServer | null;
  /** Address at which the site begins, whatever the language of the page. */
  readonly home: string;
  /** Whether all sounds were loaded from it. */
  readonly all: boolean;
}

export interface LocalServer {
  readonly datasets: readonly string[];
}

export interface ListenFiles {
  readonly tokens: () => Promise<ArrayBuffer>;
  readonly list: () => Promise<unknown>;
  /** Cards of the datasets; where it lies tells where the site begins. */
  readonly site: { readonly href: string; readonly json: () => Promise<unknown> };
}

/** More than this is loaded only when the reader asks for it. */
const loadedUnasked = 100_000;

/** Loads the sounds of the site, or all of them where the reader's own machine serves it. */
export async function loadListen(files: ListenFiles): Promise<ListenCorpus> {
  const local = localServer();
  const home = files.site.href.replace(/_file\/.*$/, "");
  const site = (await files.site.json()) as { datasets: readonly DatasetCard[]; corrected?: boolean };
  const { datasets: cards, corrected = false } = site;
  const published = (await files.list()) as ListenList;
  const total = published.datasets.reduce((sum, { tokens }) => sum + tokens, 0);
  const wanted = new URLSearchParams(location.search).get("scope");
  const all = local !== null && (wanted === "all" || (wanted === null && total <= loadedUnasked));
  const list = all ? ((await (await fetch(`${home}local/listen.json`)).json()) as ListenList) : published;
  const bytes = all ? await (await fetch(`${home}local/listen.parquet`)).arrayBuffer() : await files.tokens();
  const { utterances, datasets } = list;
  const sets = setsOf(cards);
  return { table: await readListen(bytes), utterances, datasets, sets, corrected, local, home, all };
}

/** What the reader's own machine serves beside the page; null where the page is served as plain files. */
export function localServer(): LocalServer | null {
  const meta = document.querySelector<HTMLMetaElement>('meta[name="morascope-local"]');
  return meta === null ? null : { datasets: JSON.parse(meta.content) as string[] };
}

/** Where an utterance can be heard; null where it cannot. */
export function clipAddress({ utterances, local, home }: ListenCorpus, place: number): string | null {
  const { dataset, utterance, clip } = utterances[place]!;
  if (local === null || !local.datasets.includes(dataset)) return clip === null ? null : `${home}${clip}`;
  return `${home}local/clip.wav?${new URLSearchParams({ dataset, utterance })}`;
}

/** Rows of the utterance and label set that a row belongs to: first, and one past the last. */
export function stretchOf({ table }: ListenCorpus, row: number): readonly [number, number] {
  const { place } = table.counts;
  const labelSet = table.codes.labelSet;
  const same = (other: number) => place[other] === place[row] && labelSet[other] === labelSet[row];
  let from = row;
  while (from > 0 && same(from - 1)) from--;
  let to = row + 1;
  while (to < table.size && same(to)) to++;
  return [from, to];
}

/** Name of a sound in the address: its utterance and its place in it. */
export function tokenKey({ table, utterances }: ListenCorpus, row: number): string {
  return `${utterances[table.counts.place[row]!]!.utterance}:${table.counts.index[row]}`;
}

/** The row of a sound named in the address; null where the label set has no such sound. */
export function rowOfKey(corpus: ListenCorpus, { dataset, labelSet }: CorpusSet, key: string): number | null {
  const { table, utterances } = corpus;
  const [, id, index] = /^(.*):(\d+)$/.exec(key) ?? [];
  const place = utterances.findIndex((one) => one.dataset === dataset && one.utterance === id);
  if (place < 0) return null;
  const from = table.counts.place.indexOf(place);
  for (let row = from; row >= 0 && row < table.size && table.counts.place[row] === place; row++)
    if (table.counts.index[row] === Number(index) && labelAt(table, "labelSet", row) === labelSet) return row;
  return null;
}
