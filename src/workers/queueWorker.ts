import { Worker } from "bullmq";
import type { OrderRunner } from "./orderRunner.ts";
import { orderInPayload } from "./payload.ts";
import { queueConnection } from "./queueAddress.ts";

export interface QueueWorkerOptions {
  readonly url: string;
  readonly name: string;
  /** Does the orders, in threads: this thread must stay free to say that the worker lives. */
  readonly runner: OrderRunner;
  /** Orders at once. */
  readonly concurrency: number;
  /** A worker that gives no sign of life for so long is given up, in ms. */
  readonly lockMs: number;
  readonly onError: (error: Error) => void;
  /** Told after every order how it went; `reason` is null when it was done. */
  readonly onEnd: (reason: string | null) => void;
}

/** Times that an order may take its worker down with it before it counts as failed. */
const mostStalls = 2;

/** Takes orders from a Redis queue until it is closed; `close` waits for those in hand. */
export function queueWorker(options: QueueWorkerOptions): { close: () => Promise<void> } {
  const { url, name, runner, concurrency, lockMs, onError, onEnd } = options;
  const worker = new Worker<unknown, string>(name, async ({ data }) => runner.run(orderInPayload(data)), {
    connection: queueConnection(url),
    concurrency,
    lockDuration: lockMs,
    stalledInterval: lockMs,
    maxStalledCount: mostStalls,
  });
  worker.on("error", onError);
  worker.on("completed", () => onEnd(null));
  worker.on("failed", (_, error) => onEnd(error.message));
  return {
    close: async () => {
      await worker.close();
      await runner.close();
    },
  };
}
