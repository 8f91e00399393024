import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { type ContentCache, contentKey } from "./contentCache.ts";

/** What a file's content hash is when it cannot be read. */
export const unreadable = "unreadable";

export function hashBytes(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** SHA-256 of a file's bytes; `unreadable` when there are none to be had. */
export function hashFile(path: string): string {
  try {
    return hashBytes(readFileSync(path));
  } catch {
    return unreadable;
  }
}

interface Stamp {
  readonly stamp: string;
  readonly hash: string;
}

/** A file changed so shortly before it was read may change again without its times showing it. */
const settledMs = 2000;

/**
 * Content hashes of files by path, believed as long as size and both times of the file are what they were. Whoever
 * changes a file cannot set its second time (ctime) back, so that only what is unchanged is not read again.
 */
export class FileStamps {
  readonly #known: Map<string, Stamp>;
  readonly #cache: ContentCache;
  readonly #key: string;
  #changed = false;

  /** Hashes of the files below `root` that earlier runs kept in `cache`. */
  constructor(cache: ContentCache, root: string) {
    this.#cache = cache;
    this.#key = contentKey("stamps", root);
    this.#known = cache.get<Map<string, Stamp>>(this.#key) ?? new Map();
  }

  get key(): string {
    return this.#key;
  }

  /** The hash, or null when the file is new, was changed or is not there. */
  known(path: string): string | null {
    const found = this.#known.get(path);
    return found !== undefined && found.stamp === stampOf(path) ? found.hash : null;
  }

  /** Remembers a hash that was made after `since` (ms of the clock), unless the file may still be changing. */
  remember(path: string, hash: string, since: number): void {
    const stats = statSync(path, { throwIfNoEntry: false });
    if (stats === undefined || hash === unreadable || stats.ctimeMs > since - settledMs) return;
    this.#known.set(path, { stamp: stampOf(path)!, hash });
    this.#changed = true;
  }

  save(): void {
    if (this.#changed) this.#cache.set(this.#key, this.#known);
    this.#changed = false;
  }
}

function stampOf(path: string): string | null {
  const stats = statSync(path, { throwIfNoEntry: false });
  return stats === undefined ? null : `${stats.size} ${stats.mtimeMs} ${stats.ctimeMs} ${stats.ino}`;
}
