import { statSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Command } from "commander";
import * as messages from "../messages/queue.ts";
import { UserError } from "../messages/userError.ts";
import { queueName } from "../shards/queueName.ts";
import { startPool } from "../shards/startPool.ts";
import { removeAbandoned } from "../storage/scratchFile.ts";
import { checkQueue, withoutPassword } from "../workers/queueAddress.ts";
import { queueWorker } from "../workers/queueWorker.ts";
import { append, seconds, threads } from "./runNumbers.ts";

interface WorkerFlags {
  readonly queue: string;
  readonly root: readonly string[];
  readonly workers?: number;
  readonly lock: number;
}

export function registerWorker(program: Command): void {
  program
    .command("worker")
    .summary("do the work of runs on other machines")
    .description(
      "Takes work from runs that were started with --queue, on this or other machines, until it is stopped. Datasets and results must lie in folders that all machines share, at the same paths.",
    )
    .requiredOption("--queue <url>", "the Redis server, e.g. redis://machine:6379; rediss:// for TLS")
    .requiredOption(
      "--root <folder>",
      "a folder of datasets or results that this worker may use, and no other; may be repeated",
      append,
    )
    .option("--workers <number>", "shards at once (default: one a core)", threads)
    .option("--lock <seconds>", "without a sign of life for so long, others take its work over", seconds, 30)
    .addHelpText("after", "\nExample:\n  morascope worker --queue redis://head:6379 --root /shared/speech\n")
    .action(work);
}

async function work(flags: WorkerFlags): Promise<void> {
  const roots = flags.root.map((root) => resolve(root));
  for (const root of roots)
    if (!statSync(root, { throwIfNoEntry: false })?.isDirectory())
      throw new UserError(messages.rootMissing(root));
  await checkQueue(flags.queue);
  const concurrency = flags.workers ?? availableParallelism();
  const scratch = join(tmpdir(), `morascope-worker-${process.pid}`);
  removeAbandoned(tmpdir(), "morascope-worker-");
  let done = 0;
  let failed = 0;
  const note = (text: string) => process.stderr.write(`${new Date().toISOString()} ${text}\n`);
  const worker = queueWorker({
    url: flags.queue,
    name: queueName(),
    runner: startPool(concurrency, scratch, roots),
    concurrency,
    lockMs: flags.lock * 1000,
    onError: (error) => note(error.message),
    onEnd: (reason) => {
      if (reason === null) done++;
      else failed++;
      if (reason !== null) note(reason);
      else if (done % 100 === 0) note(messages.workDone(done, failed));
    },
  });
  note(messages.workerReady(withoutPassword(flags.queue), concurrency, roots));
  await stopSignal(() => note(messages.workerStopping()));
  await worker.close();
  removeAbandoned(tmpdir(), `morascope-worker-${process.pid}`);
  note(messages.workDone(done, failed));
}

/** Waits for Ctrl-C or SIGTERM; a second one ends the program at once. */
async function stopSignal(onStop: () => void): Promise<void> {
  await new Promise<void>((resolve) => {
    const stop = () => {
      process.on("SIGINT", () => process.exit(130));
      process.on("SIGTERM", () => process.exit(143));
      onStop();
      resolve();
    };
    process.once("SIGINT", stop);
    process.once("SIGTERM", stop);
  });
}
