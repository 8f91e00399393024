import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";

const program = join(import.meta.dirname, "../../src/cli/morascope.js");

/** The command line in a process of its own. */
export interface Running {
  readonly child: ChildProcess;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals>;
  /** What it has said so far, on both streams. */
  readonly said: () => string;
}

export function startCommand(...args: readonly string[]): Running {
  return startCommandWith({}, ...args);
}

/** The same with more in its environment. */
export function startCommandWith(
  more: Readonly<Record<string, string>>,
  ...args: readonly string[]
): Running {
  const env = { ...process.env, ...more };
  const child = spawn(process.execPath, [program, ...args], { env, stdio: ["ignore", "pipe", "pipe"] });
  let text = "";
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (piece: Buffer) => {
      text += piece.toString();
    });
  const ended = new Promise<number | NodeJS.Signals>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", (code, signal) => resolve(signal ?? code ?? -1));
  });
  return { child, ended, said: () => text };
}

/** Waits until a running command says something; rejects when it ends before. */
export async function hears(running: Running, wanted: RegExp): Promise<void> {
  for (let over = false; !wanted.test(running.said()); ) {
    if (over) throw new Error(`it ended without saying ${wanted}:\n${running.said()}`);
    over = await Promise.race([
      running.ended.then(() => true),
      new Promise<boolean>((resolve) => setTimeout(() => resolve(false), 50)),
    ]);
  }
}
