// Pages that a reader of results writes: what can be wrong with them.

export function pageNameWrong(name: string): string {
  return `"${name}" cannot name a page. Use small letters, digits and hyphens, beginning with a letter, for example whispered-u.`;
}

export function pageExists(file: string): string {
  return `There is a page ${file} already. Give another name, or remove the file.`;
}

export function resultsForPage(folder: string): string {
  return `${folder} holds no results (run.json is missing). Make some with “morascope run”, or name the folder with --results.`;
}

export function pageMade(file: string, results: string, address: string): string {
  return `Wrote ${file}. Change it as you like, then build the report again:\n  morascope report ${results} --out site\nThe page is at ${address} there.\n`;
}

/** `reasons` are the builder's own lines, each with the place it speaks of. */
export function ownPageDoesNotBuild(reasons: readonly string[]): string {
  return `A page of your own does not build:\n  ${reasons.join("\n  ")}\nMend the page in the folder “pages” of the results, or move it out of there.`;
}
