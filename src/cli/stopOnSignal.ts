import type { Writable } from "node:stream";
import { stopping } from "../messages/shards.ts";

const signals = ["SIGINT", "SIGTERM"] as const;
const exitCodes = { SIGINT: 130, SIGTERM: 143 } as const;

/**
 * Stops gently at the first Ctrl-C (or SIGTERM), saying so, and at once at the second. `release` gives signals back
 * their usual meaning.
 */
export function stopOnSignal(stream: Writable): { signal: AbortSignal; release: () => void } {
  const controller = new AbortController();
  const stop = (name: (typeof signals)[number]) => {
    if (controller.signal.aborted) process.exit(exitCodes[name]);
    stream.write(`\n${stopping()}\n`);
    controller.abort();
  };
  for (const name of signals) process.on(name, stop);
  return {
    signal: controller.signal,
    release: () => {
      for (const name of signals) process.off(name, stop);
    },
  };
}
