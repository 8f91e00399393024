/** Wording about results folders. */
export function folderNotOurs(folder: string, entries: readonly string[]): string {
  const some = entries.slice(0, 3).join(", ");
  return `${folder} holds files that no run made (${some}${entries.length > 3 ? ", …" : ""}). Results are only written into a new folder or one that an earlier run made: choose another --out, or empty it yourself.`;
}

export function folderMissing(folder: string): string {
  return `There is no folder ${folder}. Give the folder that \`morascope run … --out\` wrote.`;
}

export function resultMissing(folder: string, file: string): string {
  return `${folder} holds no ${file}: it is no results folder, or its run did not finish. Run \`morascope run DATASET… --out ${folder}\` (again).`;
}

export function folderNotWritable(folder: string, code: string): string {
  const reason =
    code === "EEXIST" || code === "ENOTDIR"
      ? "a file stands in the way"
      : code === "EACCES" || code === "EPERM" || code === "EROFS"
        ? "it may not be written to"
        : code === "ENOSPC"
          ? "the disk is full"
          : code === "ENOENT"
            ? "no folder can be made there"
            : code;
  return `The results folder ${folder} cannot be used: ${reason}. Choose another --out.`;
}

/** `holder`: the process that writes into the folder; null where its lock does not say. */
export function folderInUse(
  folder: string,
  lock: string,
  holder: { readonly pid: number; readonly host: string } | null,
): string {
  const who = holder === null ? "another run" : `process ${holder.pid} on ${holder.host}`;
  return `${folder} is being written to by ${who}. Wait until that run is done, or choose another --out; if you are sure that it is no longer running, remove ${lock} and start again.`;
}

/** `files`: names of the corrections that the results in the folder were made with. */
export function correctionsLeftOut(folder: string, files: readonly string[]): string {
  return `The results in ${folder} were made with a reader's corrections (${files.join(", ")}); this run was given none, so that its results will hold none. To keep them, stop and give --corrections again.`;
}

export function jsonBroken(path: string, reason: string): string {
  return `${path} is no valid JSON (${reason}). Run the command that made it again.`;
}

export function tableDamaged(path: string, reason: string): string {
  return `${path} is damaged or no table of ours (${reason}). Run \`morascope run\` again on the datasets: it makes only the tables anew.`;
}

/** What to say of an error in which the database names a table that it could not read; null for any other. */
export function damagedTable(error: unknown): string | null {
  const { message = "" } = error instanceof Error ? error : {};
  const [reason = "", ...rest] = message.split("\n");
  const path = /(?:file|Reading) ["']([^"']+\.parquet)["']/i.exec([reason, ...rest].join(" "))?.[1];
  return path === undefined ? null : tableDamaged(path, reason);
}

export function schemaOutdated(path: string, found: string, wanted: number): string {
  return `${path} was written with table version ${found}, this version reads ${wanted}. Run \`morascope run\` again on the datasets.`;
}

/** `reasons`: what was found most often, an example each with how many there are like it. */
export function nothingToRead(
  reasons: readonly { readonly message: string; readonly count: number }[],
): string {
  const found = reasons.map(
    ({ message, count }) => `\n  ${message}${count > 1 ? ` (${count} like it)` : ""}`,
  );
  return [
    "None of the datasets has a label file or recording that can be used: there is nothing to measure.",
    "`morascope check DATASET` says what was found in its lists and labels.",
    ...(found.length === 0 ? [] : [`Found on the way:${found.join("")}`]),
  ].join(" ");
}

export function datasetTwice(id: string, first: string, second: string): string {
  return `Both ${first} and ${second} call themselves "${id}". Give one of them another id in its dataset.json.`;
}

export function outInsideDataset(out: string, dataset: string): string {
  return `${out} lies inside the dataset ${dataset}: its results would be taken for recordings of the dataset the next time. Choose an --out outside of it.`;
}
