import { join, resolve } from "node:path";
import { stopped } from "./measureDatasets.ts";
import type { RunOptions } from "./runPipeline.ts";
import { queueName } from "./shards/queueName.ts";
import { runOrder } from "./shards/runOrder.ts";
import { scratchBytes, startPool } from "./shards/startPool.ts";
import { type OrderRunner, ownProcess } from "./workers/orderRunner.ts";

/** Where the work of a run is done: in threads, on other machines, or in this very process. */
export async function startRunner(options: RunOptions, workFolder: string): Promise<OrderRunner> {
  const { workers = 1, queue, onNote = () => {} } = options;
  if (queue !== undefined) {
    const { checkQueue } = await import("./workers/queueAddress.ts");
    const { queueRunner } = await import("./workers/queueRunner.ts");
    await checkQueue(queue.url);
    return queueRunner({
      url: queue.url,
      name: queueName(),
      inHand: queue.inHand,
      attempts: queue.attempts,
      backoffMs: queue.backoffMs,
      onNote,
      workerCommand: workerCommand(options),
      interrupt: { signal: options.signal, reason: () => stopped(options)! },
    });
  }
  const scratch = join(workFolder, "decoded");
  if (workers > 1) return startPool(workers, scratch);
  const pause = async () => {
    await new Promise(setImmediate);
    const reason = stopped(options);
    if (reason !== null) throw reason;
  };
  return ownProcess((order) =>
    runOrder(order, { roots: null, pause, scratch: { folder: scratch, bytes: scratchBytes } }),
  );
}

function workerCommand({ datasets, out }: RunOptions): string {
  const roots = [out, ...datasets.map(({ folder }) => folder)].map((root) => `--root ${resolve(root)}`);
  return `morascope worker --queue URL ${roots.join(" ")}`;
}
