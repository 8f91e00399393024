import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { describe } from "vitest";

const root = resolve(import.meta.dirname, "../../../shared/data");

/** Folder of a real dataset kept beside the checkout, for tests only; null when it is not there. */
export function sharedData(name: string): string | null {
  const folder = resolve(root, name);
  return existsSync(folder) ? folder : null;
}

/** A group of checks on a real dataset; where the dataset is absent they are skipped, and the skip is printed. */
export function describeWithData(
  title: string,
  names: readonly string[],
  checks: (folders: string[]) => void,
): void {
  const folders = names.map(sharedData);
  const missing = names.filter((_, i) => folders[i] === null);
  if (missing.length === 0) describe(title, () => checks(folders as string[]));
  else {
    console.log(`skipped: ${title}: needs ${missing.join(", ")} in the shared data`);
    describe.skip(title, () => checks(names.map(() => "")));
  }
}
