import { access, mkdir, readdir, readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import * as messages from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { writeFileAtomic } from "./atomicFile.ts";
import { isLocked, takeLock } from "./folderLock.ts";
import { makeFolder } from "./makeFolder.ts";

/** The files of a results folder; `work/` holds what a run needs on its way and is gone after it. */
export const resultFiles = {
  run: "run.json",
  utterances: "utterances.parquet",
  intervals: "intervals.parquet",
  tokens: "tokens.parquet",
  cells: "cells.parquet",
  estimates: "estimates.json",
  explanations: "explanations.json",
  findings: "findings.json",
  rules: "rules.json",
  drillWords: "drill-words.json",
  problems: "problems.csv",
  datapackage: "datapackage.json",
  site: "site",
} as const;
export type ResultFile = keyof typeof resultFiles;

const workFolder = ".work";
/** Beside each scratch folder lies a lock, which says whose it is. */
const lockEnding = ".lock";
/** Scratch folder of a run or of one of its shares, or its lock. */
const isWork = /^\.work(-\d+-of-\d+)?(\.lock)?$/;
/** Folder of the results for what later runs need not work out again, and for what must not leave this machine. */
export const cacheFolder = ".cache";
const marker = ".morascope-results";

export interface ResultsFolder {
  readonly path: (file: ResultFile) => string;
  /** Scratch space inside the results folder, for one run. */
  readonly work: string;
  /** What later runs into the same folder need not work out again. */
  readonly cache: string;
  readonly close: () => Promise<void>;
}

/**
 * Opens a folder to write results into: a new one, an empty one or one that a run made. Refuses any other, and one that
 * another run is writing into, until `close`. Shares of a run have scratch folders, and so locks, of their own.
 */
export async function openResultsFolder(
  folder: string,
  markerText: string,
  workName: string = workFolder,
): Promise<ResultsFolder> {
  const entries = await listOrCreate(folder);
  if (entries.length > 0 && !entries.includes(marker))
    throw new UserError(messages.folderNotOurs(folder, entries));
  const work = join(folder, workName);
  let unlock = () => {};
  try {
    await writeFileAtomic(join(folder, marker), markerText);
    unlock = takeLock(`${work}${lockEnding}`);
    await rm(work, { recursive: true, force: true });
    await mkdir(work);
    await removeAbandonedWork(folder, entries);
  } catch (error) {
    unlock();
    if (error instanceof UserError) throw error;
    throw new UserError(messages.folderNotWritable(folder, codeOf(error)));
  }
  return {
    path: (file) => join(folder, resultFiles[file]),
    work,
    cache: join(folder, cacheFolder),
    close: async () => {
      await rm(work, { recursive: true, force: true });
      unlock();
    },
  };
}

/** What runs and shares that were killed have left in the folder. */
async function removeAbandonedWork(folder: string, entries: readonly string[]): Promise<void> {
  for (const name of entries) {
    const path = join(folder, name);
    const lock = name.endsWith(lockEnding) ? path : `${path}${lockEnding}`;
    if (!isWork.test(name) || isLocked(lock)) continue;
    await rm(path, { recursive: true, force: true });
  }
}

/** The path of one result of a finished run, or the reason why there is none. */
export async function resultPath(folder: string, file: ResultFile): Promise<string> {
  const path = join(folder, resultFiles[file]);
  const entries = await readdir(folder).catch(() => null);
  if (entries === null) throw new UserError(messages.folderMissing(folder));
  if (!entries.includes(resultFiles[file]))
    throw new UserError(messages.resultMissing(folder, resultFiles[file]));
  return path;
}

export function fileExists(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}

export async function readJson(path: string): Promise<unknown> {
  const text = await readFile(path, "utf8");
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new UserError(messages.jsonBroken(path, error instanceof Error ? error.message : String(error)));
  }
}

async function listOrCreate(folder: string): Promise<string[]> {
  try {
    await makeFolder(folder);
    return await readdir(folder);
  } catch (error) {
    throw new UserError(messages.folderNotWritable(folder, codeOf(error)));
  }
}

function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? String(error);
}
