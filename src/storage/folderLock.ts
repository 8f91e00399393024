import {
  closeSync,
  linkSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { hostname } from "node:os";
import { dirname, join } from "node:path";
import * as v from "valibot";
import { folderInUse } from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { isAlive } from "./scratchFile.ts";

/** A lock of another machine that was not renewed for so long belongs to nobody any more, in ms. */
const abandonedMs = 120_000;
const renewMs = 5000;

/** `born` tells a process from a later one with the same id; null where the system does not say. */
const Holder = v.object({ pid: v.number(), host: v.string(), born: v.nullable(v.string()) });
type Holder = v.InferOutput<typeof Holder>;

/** Locks that this process holds; any other lock with its id was left by a process before it. */
const held = new Set<string>();

/**
 * Keeps a place for one process: `path` says which one holds it. A lock whose process is gone (on this machine), or that
 * nobody renewed for two minutes (on another), is taken over; for any other a UserError says who holds it. Gives what
 * lets go of the lock.
 */
export function takeLock(path: string): () => void {
  const text = `${JSON.stringify({ pid: process.pid, host: hostname(), born: birthOf(process.pid) } satisfies Holder)}\n`;
  for (let tries = 0; !create(path, text); tries++) {
    const known = readLock(path);
    if (known === null) continue; // just let go of
    const holder = holderIn(known);
    if (tries >= mostTries || (holder !== null && isHeld(path, holder)))
      throw new UserError(folderInUse(dirname(path), path, holder));
    takeAway(path, known);
  }
  held.add(path);
  const timer = setInterval(() => renew(path, text), renewMs);
  timer.unref();
  return () => {
    clearInterval(timer);
    held.delete(path);
    rmSync(path, { force: true });
  };
}

/** Times that a stale lock may come back while it is being taken over. */
const mostTries = 3;

/** Whether a process that lives holds the lock at `path`. */
export function isLocked(path: string): boolean {
  const holder = holderIn(readLock(path) ?? "");
  return holder !== null && isHeld(path, holder);
}

/** The lock appears with its text or not at all. */
function create(path: string, text: string): boolean {
  const own = `${path}-${process.pid}.tmp`;
  try {
    writeFileSync(own, text);
    linkSync(own, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST") return false;
    if (code !== "EPERM" && code !== "ENOTSUP" && code !== "EOPNOTSUPP") throw error;
    return createPlainly(path, text); // a disk without links
  } finally {
    rmSync(own, { force: true });
  }
}

function createPlainly(path: string, text: string): boolean {
  try {
    writeFileSync(path, text, { flag: "wx" });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

function readLock(path: string): string | null {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return null;
  }
}

/** Null for what no run wrote. */
function holderIn(text: string): Holder | null {
  try {
    return v.parse(Holder, JSON.parse(text));
  } catch {
    return null;
  }
}

function isHeld(path: string, { pid, host, born }: Holder): boolean {
  if (host !== hostname()) return wasRenewed(path);
  if (pid === process.pid) return held.has(path);
  return isAlive(pid) && (born === null || birthOf(pid) === born);
}

/** When a process began, in the system's own count; null where it does not say, and for one that only waits to be forgotten. */
function birthOf(pid: number): string | null {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
      .replace(/^.*\) /s, "")
      .split(" ");
    return fields[0] === "Z" ? null : (fields[19] ?? null);
  } catch {
    return null;
  }
}

/** By the clock of the disk alone: machines that share a folder need not agree on the time. */
function wasRenewed(path: string): boolean {
  const probe = join(dirname(path), `.lock-probe-${process.pid}.tmp`);
  try {
    writeFileSync(probe, "");
    return statSync(probe).mtimeMs - statSync(path).mtimeMs < abandonedMs;
  } catch {
    return true;
  } finally {
    rmSync(probe, { force: true });
  }
}

/** Removes a stale lock, unless somebody else was quicker and its place holds a new one. */
function takeAway(path: string, stale: string): void {
  const aside = `${path}-${process.pid}.old.tmp`;
  try {
    renameSync(path, aside);
    const taken = readFileSync(aside, "utf8");
    if (taken !== stale) create(path, taken);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
  } finally {
    rmSync(aside, { force: true });
  }
}

function renew(path: string, text: string): void {
  try {
    const file = openSync(path, "r+"); // whoever reads it meanwhile finds it whole
    writeSync(file, text);
    closeSync(file);
  } catch {
    // a disk that is full or away for a moment: the next renewal, or the run itself, will tell
  }
}
