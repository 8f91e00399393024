import type { OrderRunner } from "../workers/orderRunner.ts";
import { threadPool } from "../workers/threadPool.ts";
import type { ThreadData } from "./thread.ts";

/** Decoded recordings that all threads together may keep for the next stage, in bytes: nine hours at 16 kHz. */
export const scratchBytes = 2 ** 31;

/** Threads that do orders; `roots`: see `ThreadData`. */
export function startPool(
  threads: number,
  scratchFolder: string,
  roots: readonly string[] | null = null,
): OrderRunner {
  const data: ThreadData = { roots, scratch: { folder: scratchFolder, bytes: scratchBytes / threads } };
  return threadPool(new URL("./threadEntry.js", import.meta.url), threads, data);
}
