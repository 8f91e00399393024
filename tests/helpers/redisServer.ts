import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { checkQueue } from "../../src/workers/queueAddress.ts";

/** Whether there is a Redis server to test with (Debian: redis-server). */
export const hasRedis = spawnSync("redis-server", ["--version"]).status === 0;

export interface RedisServer {
  readonly url: string;
  /** Ends the server by SIGKILL and starts it again after some seconds, on the same port, with what it had written down. */
  readonly restart: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Whether a certificate of our own can be made. */
export const hasOpenssl = spawnSync("openssl", ["version"]).status === 0;

/** A certificate for localhost that only whoever is told of it trusts; paths of certificate and key in `folder`. */
export function makeCertificate(folder: string): { readonly cert: string; readonly key: string } {
  const [cert, key] = [join(folder, "cert.pem"), join(folder, "key.pem")];
  const names = ["-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost"];
  const made = ["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-keyout", key, "-out", cert];
  if (spawnSync("openssl", [...made, ...names]).status !== 0) throw new Error("openssl made no certificate");
  return { cert, key };
}

/** Starts a Redis server that speaks TLS alone, on a free port; whether it answers, clients that trust it will tell. */
export async function startTlsRedis(
  folder: string,
  password: string,
): Promise<{ readonly url: string; readonly cert: string; readonly stop: () => Promise<void> }> {
  const { cert, key } = makeCertificate(folder);
  const port = String(await freePort());
  const tls = [
    "--tls-port",
    port,
    "--tls-cert-file",
    cert,
    "--tls-key-file",
    key,
    "--tls-auth-clients",
    "no",
  ];
  const plain = [
    "--port",
    "0",
    "--bind",
    "127.0.0.1",
    "--dir",
    folder,
    "--save",
    "",
    "--requirepass",
    password,
  ];
  const child = spawn("redis-server", [...plain, ...tls], { stdio: "ignore" });
  return { url: `rediss://:${password}@localhost:${port}`, cert, stop: () => end(child) };
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
