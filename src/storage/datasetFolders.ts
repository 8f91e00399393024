import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import * as v from "valibot";
import { writeJson } from "./atomicFile.ts";
import { cacheFolder, readJson } from "./resultsFolder.ts";

/** Kept beside the cache, never among the results: folders of a machine are nobody else's business. */
const file = "dataset-folders.json";

/** Remembers where the datasets of a run lie, by dataset id, for whoever listens to them on the same machine. */
export async function rememberFolders(
  cache: string,
  folders: Readonly<Record<string, string>>,
): Promise<void> {
  await mkdir(cache, { recursive: true });
  await writeJson(join(cache, file), folders);
}

/** Where the datasets of a results folder lay when they were measured here; empty where nobody remembers. */
export async function recallFolders(results: string): Promise<Record<string, string>> {
  try {
    const folders = await readJson(join(results, cacheFolder, file));
    return v.parse(v.record(v.string(), v.string()), folders);
  } catch {
    return {};
  }
}
