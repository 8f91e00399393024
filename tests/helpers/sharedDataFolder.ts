import { existsSync } from "node:fs";
import { resolve } from "node:path";

const root = resolve(import.meta.dirname, "../../../shared/data");

/** Folder of a real dataset kept beside the checkout, for tests and benchmarks only; null when it is not there. */
export function sharedData(name: string): string | null {
  const folder = resolve(root, name);
  return existsSync(folder) ? folder : null;
}
