import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { SeededRandom } from "../../../src/statistics/seededRandom.ts";
import { hears, type Running, startCommand } from "../../helpers/commandLine.ts";
import { type RedisServer, startRedis } from "../../helpers/redisServer.ts";
import { differences, filesOf } from "./resultFiles.ts";
import { runWhole } from "./runWhole.ts";

interface QueueFaults {
  readonly name: string;
  readonly dataset: string;
  readonly out: string;
  readonly expected: ReadonlyMap<string, string>;
  readonly random: SeededRandom;
  /** Times that each of the two disturbances happens. */
  readonly times: number;
}

/** Runs over a queue with two workers, one of them killed, or the server restarted, at a random moment of their work. */
export async function queueFaults(given: QueueFaults): Promise<boolean> {
  const { name, dataset, out, expected, random, times } = given;
  const folder = mkdtempSync(join(tmpdir(), "morascope-redis-"));
  const redis = await startRedis(folder);
  let same = 0;
  try {
    const whole = await disturbed(redis, dataset, out, null, 0);
    let workMs = whole.workMs;
    for (let i = 0; i < 2 * times; ) {
      const what = i % 2 === 0 ? "worker" : "server";
      const run = await disturbed(redis, dataset, out, what, random.uniform() * workMs);
      if (!run.happened) {
        workMs = Math.min(workMs, run.workMs);
        continue;
      }
      const different = differences(expected, filesOf(out));
      if (different.length === 0) same++;
      i++;
      console.log(
        `${name}, queue ${i}: ${what === "worker" ? "a worker killed" : "the server restarted"} after ${(run.atMs / 1000).toFixed(1)} s of work, ${different.length === 0 ? "identical" : `DIFFERENT: ${different.slice(0, 5).join(", ")}`}`,
      );
    }
    console.log(`${name}: ${same} of ${2 * times} over a queue identical`);
    return same === 2 * times;
  } finally {
    await redis.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One run, disturbed `atMs` after its workers are there; `happened` is false when it had ended by then. */
async function disturbed(
  redis: RedisServer,
  dataset: string,
  out: string,
  what: "worker" | "server" | null,
  atMs: number,
): Promise<{ happened: boolean; atMs: number; workMs: number }> {
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out);
  const roots = ["--root", dataset, "--root", out];
  const workers = [0, 1].map(() =>
    startCommand("worker", "--queue", redis.url, "--workers", "1", "--lock", "3", ...roots),
  );
  try {
    await Promise.all(workers.map((worker) => hears(worker, /Waiting for work/)));
    let happened = false;
    let over = false;
    let disturbing: Promise<unknown> = Promise.resolve();
    const timer = setTimeout(() => {
      happened = !over && what !== null;
      if (happened) disturbing = what === "worker" ? end(workers[0]!) : redis.restart();
    }, atMs);
    const more = ["--queue", redis.url, "--attempts", "3", "--back-off", "1"];
    const { ms, timeline } = await runWhole(dataset, out, { report: false, more });
    over = true;
    clearTimeout(timer);
    await disturbing;
    return { happened, atMs, workMs: timeline.find(({ task }) => task === "Writing tables")?.atMs ?? ms };
  } finally {
    await Promise.all(workers.map(end));
  }
}

async function end(worker: Running): Promise<void> {
  worker.child.kill("SIGKILL");
  await worker.ended;
}
