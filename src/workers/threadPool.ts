import { Piscina } from "piscina";
import type { OrderRunner } from "./orderRunner.ts";

/**
 * Does orders in `threads` threads, each running the module at `entry` (a file whose default export takes an order).
 * Two orders a thread are in hand, so that none waits for the next.
 */
export function threadPool(entry: URL, threads: number, data: unknown): OrderRunner {
  const pool = new Piscina({
    filename: entry.href,
    minThreads: threads,
    maxThreads: threads,
    workerData: data,
    // an idle thread that waits on shared memory cannot be stopped, and takes a core on some systems
    atomics: "disabled",
  });
  return {
    inHand: 2 * threads,
    run: (order) => pool.run(order) as Promise<string>,
    close: () => pool.destroy(),
  };
}
