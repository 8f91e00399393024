import { join } from "node:path";
import { Redis } from "ioredis";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { queueUnreachable } from "../../src/messages/queue.ts";
import { runPipeline } from "../../src/runPipeline.ts";
import { readColumns } from "../../src/storage/readColumns.ts";
import { checkQueue } from "../../src/workers/queueAddress.ts";
import { queueRunner } from "../../src/workers/queueRunner.ts";
import { queueWorker } from "../../src/workers/queueWorker.ts";
import { hears, type Running, startCommand, startCommandWith } from "../helpers/commandLine.ts";
import { writeDemoPart } from "../helpers/demoPart.ts";
import { type MeasuredRows, measuredRows } from "../helpers/measuredRows.ts";
import { hasOpenssl, hasRedis, type RedisServer, startRedis, startTlsRedis } from "../helpers/redisServer.ts";
import { runOptions } from "../helpers/runOptions.ts";
import { keptFolder } from "../helpers/tempFolder.ts";

if (!hasRedis)
  console.log("skipped: runs over a queue, 5 checks: they need redis-server (Debian: redis-server)");

describe.skipIf(!hasRedis)("a run whose work is done over a queue", () => {
  const dataset = keptFolder();
  let redis: RedisServer;
  let undisturbed: MeasuredRows;
  const workers: Running[] = [];

  beforeAll(async () => {
    redis = await startRedis(keptFolder(), "not a secret");
    writeDemoPart(dataset, { speakers: ["demo-01", "demo-03"], each: 8, labels: false });
    undisturbed = await measuredRows(dataset, keptFolder(), { shardSize: 3 });
  });

  afterAll(async () => {
    for (const { child } of workers) child.kill("SIGKILL");
    await Promise.all(workers.map(({ ended }) => ended));
    await redis?.stop();
  });

  const startWorker = async (...roots: string[]) => {
    const options = roots.flatMap((root) => ["--root", root]);
    const url = redis.url;
    const worker = startCommand("worker", "--queue", url, "--workers", "1", "--lock", "2", ...options);
    workers.push(worker);
    await hears(worker, /Waiting for work/);
    return worker;
  };
  const stop = async (worker: Running) => {
    worker.child.kill("SIGKILL");
    await worker.ended;
  };
  const queue = () => ({ url: redis.url, inHand: 8, attempts: 2, backoffMs: 100 });

  test("gives the same tables when one of two workers is killed in the middle of its work", async () => {
    const out = keptFolder();
    const [one, other] = await Promise.all([startWorker(dataset, out), startWorker(dataset, out)]);
    let killed: Promise<void> | null = null;
    const rows = await measuredRows(dataset, out, {
      queue: queue(),
      shardSize: 3,
      onProgress: ({ task, done }) => {
        if (task.startsWith("Listening") && done > 0) killed ??= stop(one);
      },
    });
    expect(killed).not.toBeNull();
    expect(rows.tables).toBe(undisturbed.tables);
    await stop(other);
  });

  test("gives the same tables when the server is killed and started again in between", async () => {
    const out = keptFolder();
    const worker = await startWorker(dataset, out);
    const notes: string[] = [];
    let restarted: Promise<void> | null = null;
    const rows = await measuredRows(dataset, out, {
      queue: queue(),
      shardSize: 3,
      onNote: (note) => notes.push(note),
      onProgress: ({ task, done }) => {
        if (task.startsWith("Listening") && done > 0) restarted ??= redis.restart();
      },
    });
    await restarted;
    expect(restarted).not.toBeNull();
    expect(notes.some((note) => note.includes("does not answer"))).toBe(true);
    expect(rows.tables).toBe(undisturbed.tables);
    await stop(worker);
  });

  test("refuses folders that the worker was not started with, and says which", async () => {
    const out = keptFolder();
    const worker = await startWorker(out);
    await expect(measuredRows(dataset, out, { queue: queue() })).rejects.toThrow(
      /lies outside the folders that this worker was started with/,
    );
    await stop(worker);
  });

  test("sets an order aside that fails on every try; others are done meanwhile", async () => {
    const tries = new Map<string, number>();
    const name = "test-of-failures";
    const worker = queueWorker({
      ...{ url: redis.url, name, concurrency: 1, lockMs: 2000, onError: () => {}, onEnd: () => {} },
      runner: {
        inHand: 1,
        run: async (order) => {
          tries.set(order, (tries.get(order) ?? 0) + 1);
          if (order === "poisoned") throw new Error("it cannot be done");
          return `${order}, done`;
        },
        close: async () => {},
      },
    });
    const runner = queueRunner({ ...queue(), attempts: 3, name, onNote: () => {}, workerCommand: "" });
    const poisoned = runner.run("poisoned");
    const failure = expect(poisoned).rejects.toThrow("it cannot be done");
    expect(await Promise.all(["a", "b"].map((order) => runner.run(order)))).toEqual(["a, done", "b, done"]);
    await failure;
    expect(Object.fromEntries(tries)).toEqual({ poisoned: 3, a: 1, b: 1 });
    await runner.close();
    await worker.close();
  });

  test("told to stop, it takes back what no worker has begun, and ends", async () => {
    const controller = new AbortController();
    const interrupt = { signal: controller.signal, reason: () => new Error("stopped") };
    const own = { name: "test-of-stopping", onNote: () => {}, workerCommand: "", interrupt };
    const runner = queueRunner({ ...queue(), ...own });
    const orders = [runner.run("a"), runner.run("b")].map((answer) =>
      expect(answer).rejects.toThrow("stopped"),
    );
    controller.abort();
    await Promise.all(orders);
    await expect(runner.run("c")).rejects.toThrow("stopped");
    await runner.close();
  });

  test("a server without room sets nothing aside: the order is handed in once there is some", async () => {
    const server = new Redis(redis.url);
    const notes: string[] = [];
    const own = { name: "test-of-room", onNote: (note: string) => notes.push(note), workerCommand: "" };
    const runner = queueRunner({ ...queue(), ...own });
    await server.config("SET", "maxmemory", "1");
    const answer = runner.run("a");
    await expect.poll(() => notes.join(), { timeout: 5000 }).toContain("maxmemory");
    await server.config("SET", "maxmemory", "0");
    const worker = queueWorker({
      ...{ url: redis.url, name: own.name, concurrency: 1, lockMs: 2000, onError: () => {}, onEnd: () => {} },
      runner: { inHand: 1, run: async (order) => `${order}, done`, close: async () => {} },
    });
    expect(await answer).toBe("a, done");
    await Promise.all([runner.close(), worker.close()]);
    server.disconnect();
  });

  test("a number of a database that the server does not have is refused at once", async () => {
    await expect(checkQueue(`${redis.url}/99`)).rejects.toThrow(/DB index is out of range/);
  });

  test("needs the password, and says so without showing it", async () => {
    const wrong = redis.url.replace("not a secret", "wrong");
    const refusal = await checkQueue(wrong).catch((error: Error) => error.message);
    expect(refusal).toContain(queueUnreachable(wrong.replace(":wrong@", "…@"), "").slice(0, 40));
    expect(refusal).not.toContain("wrong");
  });
});

describe.skipIf(!hasRedis || !hasOpenssl)("a queue behind TLS, with a certificate of our own", () => {
  test("gives the run's work to workers that are told of the certificate, and refuses whoever is not", async () => {
    const redis = await startTlsRedis(keptFolder(), "secret");
    const running: Running[] = [];
    const start = (...args: string[]) => {
      const one = startCommandWith({ NODE_EXTRA_CA_CERTS: redis.cert }, ...args, "--queue", redis.url);
      running.push(one);
      return one;
    };
    try {
      const [dataset, out] = [keptFolder(), keptFolder()];
      writeDemoPart(dataset, { speakers: ["demo-01"], each: 3, labels: false });
      const worker = start("worker", "--workers", "1", "--root", dataset, "--root", out);
      await hears(worker, /Waiting for work/);
      const run = start("run", dataset, "-o", out, "--no-report");
      expect([await run.ended, run.said()]).toEqual([0, expect.stringContaining("Results: ")]);
      const local = keptFolder();
      await runPipeline(runOptions([dataset], local));
      for (const name of ["utterances", "intervals", "tokens", "cells"])
        expect(await readColumns(join(out, `${name}.parquet`))).toEqual(
          await readColumns(join(local, `${name}.parquet`)),
        );
      await expect(checkQueue(redis.url)).rejects.toThrow(/self-signed certificate/);
    } finally {
      for (const { child } of running) child.kill("SIGKILL");
      await Promise.all(running.map(({ ended }) => ended));
      await redis.stop();
    }
  });
});

test("where no server is, the run says so and how to start one", async () => {
  await expect(checkQueue("redis://127.0.0.1:1")).rejects.toThrow(/redis-server/);
});
