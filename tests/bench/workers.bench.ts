/**
 * How much two worker threads gain over one on the audio way (listening, learning, measuring; no tables), and what a
 * queue costs beside the local pool at the same number of threads. Prints times, ratios, CPU time and load: a ratio says
 * something only while two cores are free. `npm run bench -- workers [DATASET [SHARD-SIZE [ROUNDS]]]`: pool and queue in
 * turn, so many rounds (3), by their medians. A shard of 512 utterances of the demo's kind is some ten seconds of work;
 * what the queue adds is for each shard, and with longer shards weighs less.
 */
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import type { RunOptions } from "../../src/runPipeline.ts";
import { startPool } from "../../src/shards/startPool.ts";
import { measuredRows } from "../helpers/measuredRows.ts";
import { hasRedis, startRedis } from "../helpers/redisServer.ts";

const demo = join(import.meta.dirname, "../../data/demo");
const [dataset = demo, size = "32", wantedRounds = "3"] = process.argv.slice(2);
const shardSize = Number(size);
const program = join(import.meta.dirname, "../../src/cli/morascope.js");

/** Seconds of the run, of the listening to measuring alone, and tables. */
async function time(name: string, threads: number, more: Partial<RunOptions> = {}): Promise<number> {
  const out = mkdtempSync(join(tmpdir(), "morascope-bench-"));
  const worker = more.queue === undefined ? null : startWorker(more.queue.url, out, threads);
  let heardAt = 0;
  const onProgress: RunOptions["onProgress"] = ({ task }) => {
    if (task.startsWith("Listening")) heardAt ||= performance.now();
  };
  const cpu = process.cpuUsage();
  try {
    if (worker !== null) await new Promise((resolve) => setTimeout(resolve, 3000));
    await measuredRows(dataset, out, { shardSize, workers: threads, onProgress, ...more }, (runner) =>
      threads === 1 && more.queue === undefined ? { ...startPool(1, join(out, ".work/decoded")) } : runner,
    );
    const sec = (performance.now() - heardAt) / 1000;
    const { user, system } = process.cpuUsage(cpu);
    console.log(
      `${name}: ${sec.toFixed(2)} s, own CPU ${((user + system) / 1e6).toFixed(1)} s, load ${loadavg()[0]!.toFixed(1)}`,
    );
    return sec;
  } finally {
    worker?.kill("SIGKILL");
    rmSync(out, { recursive: true, force: true });
  }
}

function startWorker(url: string, out: string, threads: number) {
  const roots = [dataset, out].flatMap((root) => ["--root", root]);
  const args = [program, "worker", "--queue", url, "--workers", String(threads), ...roots];
  return spawn(process.execPath, args, { stdio: "ignore" });
}

await time("to warm up, 2 threads", 2);
const one = await time("1 thread", 1);
const two = await time("2 threads", 2);
console.log(`2 threads do ${(one / two).toFixed(2)} times as much as 1 (wanted on two free cores: 1.7)`);
if (hasRedis) {
  const folder = mkdtempSync(join(tmpdir(), "morascope-bench-redis-"));
  const redis = await startRedis(folder);
  const queue = { url: redis.url, inHand: 8, attempts: 1, backoffMs: 1000 };
  const [queued, pooled]: [number[], number[]] = [[], []];
  for (let round = 0; round < Number(wantedRounds); round++) {
    queued.push(await time("2 threads of a worker on a queue", 2, { queue }));
    pooled.push(await time("2 threads again", 2));
  }
  const middle = (times: number[]) => times.sort((a, b) => a - b)[times.length >> 1]!;
  const longer = middle(queued) / middle(pooled) - 1;
  console.log(`the queue takes ${(100 * longer).toFixed(1)} % longer (wanted at shards of 30 s: below 5 %)`);
  await redis.stop();
  rmSync(folder, { recursive: true, force: true });
} else console.log("skipped: the queue; it needs redis-server");
process.exit();
