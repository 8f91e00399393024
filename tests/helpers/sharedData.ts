import { describe } from "vitest";
import { sharedData } from "./sharedDataFolder.ts";

export { sharedData };

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
