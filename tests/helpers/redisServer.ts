import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createServer } from "node:net";
import { checkQueue } from "../../src/workers/queueAddress.ts";

/** Whether there is a Redis server to test with (Debian: redis-server). */
export const hasRedis = spawnSync("redis-server", ["--version"]).status === 0;

export interface RedisServer {
  readonly url: string;
  /** Ends the server by SIGKILL and starts it again after some seconds, on the same port, with what it had written down. */
  readonly restart: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Long enough for clients to find nobody there. */
const awayMs = 3000;

/** Starts a Redis server of our own on a free port, its files in `folder`. */
export async function startRedis(folder: string, password: string | null = null): Promise<RedisServer> {
  const port = await freePort();
  const url = `redis://${password === null ? "" : `:${password}@`}127.0.0.1:${port}`;
  const secret = password === null ? [] : ["--requirepass", password];
  const start = async () => {
    const args = ["--port", String(port), "--bind", "127.0.0.1", "--dir", folder, "--save", ""];
    const child = spawn("redis-server", [...args, "--appendonly", "yes", ...secret], { stdio: "ignore" });
    for (let tries = 0; ; tries++) {
      const error = await checkQueue(url).then(
        () => null,
        (reason: unknown) => reason,
      );
      if (error === null) return child;
      if (tries === 50) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  };
  let child = await start();
  const stop = () => end(child);
  return {
    url,
    restart: async () => {
      await stop();
      await new Promise((resolve) => setTimeout(resolve, awayMs));
      child = await start();
    },
    stop,
  };
}

async function end(child: ChildProcess): Promise<void> {
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await ended;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" && address !== null ? address.port : 0));
    });
  });
}
