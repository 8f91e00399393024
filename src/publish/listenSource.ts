import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { DatasetCard } from "../datasets/types.ts";
import type { AudioFolders, Clip } from "./clips.ts";
import { makeListenClips } from "./listenClips.ts";
import type { ListenList } from "./listenColumns.ts";
import { chooseTokens } from "./listenTokens.ts";

/** Vowels and consonants that a published site lists. */
export const publishedTokens = 20_000;

export interface ListenSource {
  readonly cards: readonly DatasetCard[];
  readonly results: string;
  readonly folders: AudioFolders;
  /** Utterances that are heard elsewhere in the site. */
  readonly examples: readonly Pick<Clip, "dataset" | "utterance">[];
  /** Folder for the list and the table. */
  readonly data: string;
  /** Folder for the recordings. */
  readonly recordings: string;
}

/** Writes what the page of single sounds loads: `listen.parquet`, `listen.json`, and the recordings that may be heard. */
export async function writeListenSource(source: ListenSource): Promise<void> {
  const { cards, results, folders, examples, data, recordings } = source;
  const published = new Map<string, Set<string>>();
  for (const { dataset, utterance } of examples)
    published.set(dataset, (published.get(dataset) ?? new Set()).add(utterance));
  await mkdir(data, { recursive: true });
  const out = path.join(data, "listen.parquet");
  const { utterances, tokens } = await chooseTokens({
    results,
    out,
    limit: publishedTokens,
    first: published,
  });
  const { clips, silent } = await makeListenClips({ cards, utterances, folders, published, out: recordings });
  const list: ListenList = {
    utterances: utterances.map(({ dataset, utterance, speaker, text, reading }, i) => ({
      ...{ dataset, utterance, speaker, text, reading },
      clip: clips[i]!,
    })),
    datasets: [...tokens].map(([id, count]) => ({
      id,
      tokens: count,
      shown: utterances.reduce((sum, one) => sum + (one.dataset === id ? one.tokens : 0), 0),
      silent: silent.get(id) ?? null,
    })),
  };
  await writeFile(path.join(data, "listen.json"), JSON.stringify(list));
}
