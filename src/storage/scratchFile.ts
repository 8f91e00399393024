import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";

/** Bytes that this thread has laid aside, by folder. */
const laidAside = new Map<string, number>();

/**
 * Values that are cheap to make again but cheaper to keep for the next stage of the same run. They may be gone at any
 * time, and nothing is synced: the folder belongs to one run.
 */
export class ScratchFiles {
  readonly #folder: string;
  readonly #bytes: number;

  /** At most `bytes` are laid aside by one thread. */
  constructor(folder: string, bytes: number) {
    this.#folder = folder;
    this.#bytes = bytes;
  }

  keep(name: string, value: unknown): void {
    const body = serialize(value);
    const bytes = (laidAside.get(this.#folder) ?? 0) + body.byteLength;
    if (bytes > this.#bytes) return;
    laidAside.set(this.#folder, bytes);
    try {
      mkdirSync(this.#folder, { recursive: true });
      writeFileSync(join(this.#folder, name), body);
    } catch {
      rmSync(join(this.#folder, name), { force: true });
    }
  }

  /** The value, once; null when it is not there any more. */
  take<T>(name: string): T | null {
    const path = join(this.#folder, name);
    if (statSync(path, { throwIfNoEntry: false }) === undefined) return null;
    try {
      return deserialize(readFileSync(path)) as T;
    } catch {
      return null;
    } finally {
      rmSync(path, { force: true });
    }
  }
}

/** Removes the scratch folders (`prefix` and a process id) of processes that are gone, or of this one. */
export function removeAbandoned(folder: string, prefix: string): void {
  for (const name of readdirSync(folder)) {
    if (!name.startsWith(prefix)) continue;
    const pid = Number(/\d+$/.exec(name)?.[0]);
    if (pid === process.pid || !isAlive(pid)) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

/** Whether a process of this machine has this id. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
