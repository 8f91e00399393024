import { stat } from "node:fs/promises";
import { join, resolve } from "node:path";
import * as messages from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import type { AudioFolders } from "../publish/clips.ts";
import { isSite } from "../publish/outputFolder.ts";
import { readRun } from "../publish/readResults.ts";
import type { ServeOptions } from "../publish/serve.ts";
import { recallFolders } from "../storage/datasetFolders.ts";
import { resultFiles } from "../storage/resultsFolder.ts";

export interface WhatToServe extends Pick<ServeOptions, "site" | "local"> {
  /** What can be heard, in sentences. */
  readonly notes: readonly string[];
}

/**
 * What a folder given to `serve` stands for: a report alone, or results with the report in them and, as far as they are
 * known, the folders of the recordings. `audio` names some; the run remembered others. Throws a UserError for neither.
 */
export async function whatToServe(folder: string, audio: AudioFolders): Promise<WhatToServe> {
  const results = resolve(folder);
  if (!(await isThere(join(results, resultFiles.run)))) {
    if (Object.keys(audio).length > 0) throw new UserError(messages.audioNeedsResults(folder));
    return { site: folder, local: null, notes: [] };
  }
  const site = join(results, resultFiles.site);
  if (!(await isSite(site))) throw new UserError(messages.resultsWithoutReport(folder));
  const { datasets } = await readRun(results);
  const ids = datasets.map(({ id }) => id);
  for (const [id, path] of Object.entries(audio)) {
    if (!ids.includes(id)) throw new UserError(messages.audioNotOfResults(id, ids));
    if (!(await isThere(path))) throw new UserError(messages.audioFolderMissing(id, path));
  }
  const folders = { ...(await existing(await recallFolders(results), ids)), ...audio };
  const heard = datasets.filter(({ audioHours }) => audioHours !== null).map(({ id }) => id);
  const played = heard.filter((id) => folders[id] !== undefined);
  const silent = heard.filter((id) => folders[id] === undefined);
  return {
    ...{ site, local: { results, folders } },
    notes: [
      ...(played.length > 0 ? [messages.servedRecordings(played)] : []),
      ...(silent.length > 0 ? [messages.servedWithoutRecordings(silent)] : []),
    ],
  };
}

async function existing(folders: AudioFolders, ids: readonly string[]): Promise<AudioFolders> {
  const found: Record<string, string> = {};
  for (const [id, path] of Object.entries(folders))
    if (ids.includes(id) && (await isThere(path))) found[id] = path;
  return found;
}

async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
