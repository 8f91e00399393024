import { codeVersion } from "../storage/contentCache.ts";

const folders = ["alignment", "measures", "phonology", "shards", "signals", "statistics", "storage"];

/** The queue of this very version of the program: another one would work out other parts under the same keys. */
export function queueName(): string {
  return `morascope-${codeVersion(folders).slice(0, 16)}`;
}
