import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Orders } from "./shards/performOrder.ts";
import { codeVersion, contentKey } from "./storage/contentCache.ts";
import { hashFile } from "./storage/fileStamps.ts";

/** Code that conclusions hang on, as places in `src`. */
const code = [
  ...["basis.ts", "chooseDrillWords.ts", "judgeResults.ts"],
  ...[
    "estimates",
    "findings",
    "interface",
    "measures",
    "messages",
    "phonology",
    "signals",
    "statistics",
    "storage",
  ],
];

const referenceFolder = fileURLToPath(new URL("../data/reference/", import.meta.url));

/**
 * Keeps what is concluded from the tables, so that a run whose tables came out the same need not work it out again.
 * `files`: the tables.
 */
export function keepConclusions(
  orders: Orders,
  files: readonly string[],
): <T>(name: string, parameters: unknown, conclude: () => T | Promise<T>) => Promise<T> {
  const reference = readdirSync(referenceFolder).map((file) => `${referenceFolder}${file}`);
  const content = [codeVersion(code), ...[...files, ...reference].map(hashFile)];
  return async <T>(name: string, parameters: unknown, conclude: () => T | Promise<T>) => {
    const key = orders.use(contentKey("conclusion", name, JSON.stringify(parameters), ...content));
    const kept = orders.cache.get<{ readonly value: T }>(key);
    if (kept !== null) return kept.value;
    const value = await conclude();
    orders.cache.set(key, { value });
    return value;
  };
}
