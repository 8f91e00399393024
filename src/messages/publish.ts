/** Wording of everything that can be refused while a site is built or served. */

export function outputIsFile(folder: string): string {
  return `${folder} is a file, or lies below one. A report is a folder: choose another --out.`;
}

export function outputIsNotOurs(folder: string, entries: readonly string[]): string {
  const some = entries.slice(0, 3).join(", ");
  return `${folder} already holds files that are not a report of ours (${some}${entries.length > 3 ? ", …" : ""}). A report is only written into an empty or new folder, or over an earlier report. Choose another folder with --out, or empty this one yourself.`;
}

export function outputHoldsResults(out: string, results: string): string {
  return `The report folder ${out} would swallow the results folder ${results}. Choose a folder beside or inside the results, for example ${results}/site.`;
}

export function resultsMissing(folder: string, file: string): string {
  return `${folder} is not a results folder: it has no ${file}. Give the folder that "morascope run … --out" wrote.`;
}

export function resultsUnreadable(file: string, fault: string): string {
  return `${file} cannot be used: ${fault}. Run "morascope run" again to write fresh results.`;
}

export function siteNotSelfContained(faults: readonly string[]): string {
  const list = faults.slice(0, 10).map((fault) => `  ${fault}`);
  return `The built report would not stand alone (${faults.length} faults):\n${list.join("\n")}`;
}

export function notASite(folder: string): string {
  return `${folder} is not a report: it has no morascope-site.json. Build one with "morascope report RESULTS --out ${folder}".`;
}

export function portInvalid(value: string): string {
  return `--port ${value} is not a port number. Give a whole number from 0 to 65535; 0 takes any free port.`;
}

export function portTaken(port: number): string {
  return `Port ${port} is in use by another program. Leave --port out to take a free one, or name another.`;
}

export function hostNotAllowed(host: string, port: number): string {
  return `Cannot listen on ${host} port ${port}. Leave --host out to serve on this machine only.`;
}

/** Printed when a report is served to other machines on purpose. */
export function servedToNetwork(host: string): string {
  return `Serving on ${host}: other machines on this network can open the report. Leave --host out to keep it on this machine.`;
}

export function siteBuilt(
  out: string,
  { pages, files, bytes }: { pages: number; files: number; bytes: number },
): string {
  const mb = (bytes / 1e6).toFixed(1);
  return `The report is in ${out}: ${pages} pages, ${files} files, ${mb} MB. Look at it with "morascope serve ${out}".\n`;
}

export function servedAt(url: string): string {
  return `The report is open at ${url}\nStop with Ctrl+C.\n`;
}

/** Printed when the recordings are at hand: what is served to whoever sits at this machine. */
export function servedRecordings(datasets: readonly string[]): string {
  return `Recordings of ${datasets.join(", ")} are played from their own folders, on this machine only.\n`;
}

export function servedWithoutRecordings(datasets: readonly string[]): string {
  return `Of ${datasets.join(", ")} only what the report holds can be heard: the folder of the recordings is not known. Name it with ${datasets.map((id) => `--audio ${id}=FOLDER`).join(" ")}.\n`;
}

export function audioNeedsResults(folder: string): string {
  return `--audio goes with a results folder, and ${folder} is a report alone. Give the folder that "morascope run … --out" wrote.`;
}

export function audioNotOfResults(id: string, datasets: readonly string[]): string {
  return `The results hold no dataset "${id}"; they are of ${datasets.join(", ")}.`;
}

export function audioFolderMissing(id: string, folder: string): string {
  return `--audio ${id}: there is no folder ${folder}.`;
}

export function resultsWithoutReport(results: string): string {
  return `${results} holds no report: it was made with --no-report. Build it with "morascope report ${results} --out ${results}/site".`;
}

/** Shown where clips would stand: the licence does not allow any. */
export function clipsForbidden(dataset: string, note: string): string {
  return `${dataset}: no recording may be published. ${note}`;
}

export function clipsNeedFolder(dataset: string, id: string): string {
  return `${dataset}: this report was built without the recordings at hand. Build it with --audio ${id}=FOLDER to add examples to hear.`;
}

export function clipsUnreadable(dataset: string, count: number, fault: string): string {
  const some = count === 1 ? "One example is" : `${count} examples are`;
  return `${dataset}: ${some} missing, because the recording could not be read. ${fault}`;
}

export function audioFolderUnclear(value: string): string {
  return `"${value}" does not say which dataset's recordings lie where. Give the dataset's id and its folder, for example --audio demo=data/demo.`;
}
