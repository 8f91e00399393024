import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { isExhausted } from "../messages/machine.ts";

/** What a file's content hash is when it cannot be read. */
export const unreadable = "unreadable";

export function hashBytes(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** SHA-256 of a file's bytes; `unreadable` when there are none to be had. */
export function hashFile(path: string): string {
  try {
    return hashBytes(readFileSync(path));
  } catch (error) {
    if (isExhausted(error)) throw error;
    return unreadable;
  }
}

/**
 * Size and times of a file. As long as they are the same, so is its content: whoever changes a file cannot set its
 * second time (ctime) back. `unreadable` when there is no such file.
 */
export function stampOf(path: string): string {
  const stats = statSync(path, { throwIfNoEntry: false });
  return stats === undefined ? unreadable : `${stats.size} ${stats.mtimeMs} ${stats.ctimeMs}`;
}

/** A file changed so shortly before it was read may change again without its times showing it. */
const settledMs = 2000;

/** Whether a file that is read from `since` on (ms of the clock) was last changed well before. */
export function isSettled(path: string, since: number): boolean {
  const stats = statSync(path, { throwIfNoEntry: false });
  return stats === undefined || stats.ctimeMs <= since - settledMs;
}
