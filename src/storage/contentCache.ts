import { createHash, randomUUID } from "node:crypto";
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { deserialize, serialize } from "node:v8";

/**
 * Keeps what was worked out, under a key made of everything it depends on: the same recording, parameters and code
 * give it back, anything else is worked out anew. Parts appear whole or not at all, also when the machine is switched
 * off meanwhile. A damaged part counts as missing and is removed.
 */
export class ContentCache {
  readonly folder: string;

  constructor(folder: string) {
    this.folder = folder;
  }

  /** Whether there is a part, whole or damaged. */
  has(key: string): boolean {
    return existsSync(this.#pathOf(key));
  }

  get<T>(key: string): T | null {
    const path = this.#pathOf(key);
    try {
      const bytes = readFileSync(path);
      const body = bytes.subarray(sumBytes);
      if (bytes.subarray(0, sumBytes).equals(sumOf(body))) return deserialize(body) as T;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    }
    rmSync(path, { force: true });
    return null;
  }

  set(key: string, value: unknown): void {
    const path = this.#pathOf(key);
    mkdirSync(dirname(path), { recursive: true });
    const body = serialize(value);
    const partial = `${path}.${randomUUID()}${partialEnding}`;
    try {
      const file = openSync(partial, "w");
      try {
        writeAll(file, sumOf(body));
        writeAll(file, body);
        fsyncSync(file);
      } finally {
        closeSync(file);
      }
      renameSync(partial, path);
    } finally {
      rmSync(partial, { force: true });
    }
  }

  delete(key: string): void {
    rmSync(this.#pathOf(key), { force: true });
  }

  /** Removes the parts that are not `wanted`, and what killed runs left half-written; returns how many went. */
  prune(wanted: (key: string) => boolean): number {
    let removed = 0;
    for (const file of readdirSync(this.folder, { recursive: true, encoding: "utf8" })) {
      const path = join(this.folder, file);
      const name = file.slice(-keyLength);
      const isPart = /^[0-9a-f]{64}$/.test(name) && file.length === keyLength + 3;
      if (file.endsWith(partialEnding) ? !isOld(path) : !isPart || wanted(name)) continue;
      rmSync(path, { force: true });
      removed++;
    }
    return removed;
  }

  #pathOf(key: string): string {
    return join(this.folder, key.slice(0, 2), key);
  }
}

const sumBytes = 32;
const keyLength = 64;
const partialEnding = ".tmp";
/** A half-written part this old belongs to nobody who is still writing. */
const abandonedMs = 3_600_000;

function isOld(path: string): boolean {
  const stats = statSync(path, { throwIfNoEntry: false });
  return stats !== undefined && Date.now() - stats.mtimeMs > abandonedMs;
}

function sumOf(body: Uint8Array): Buffer {
  return createHash("sha256").update(body).digest();
}

function writeAll(file: number, bytes: Uint8Array): void {
  for (let written = 0; written < bytes.length; )
    written += writeSync(file, bytes, written, bytes.length - written);
}

/** A key of whatever goes into a result; parts are told apart by their lengths. */
export function contentKey(...parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash("sha256");
  for (const part of parts) {
    const bytes = typeof part === "string" ? Buffer.from(part) : part;
    hash.update(`${bytes.byteLength}:`).update(bytes);
  }
  return hash.digest("hex");
}

const source = fileURLToPath(new URL("..", import.meta.url));

/**
 * Stands for the code of some folders and files of `src`: whatever they work out is worked out anew when they change.
 * Dependencies count too.
 */
export function codeVersion(places: readonly string[]): string {
  const files = places.flatMap((place) =>
    /\.ts$/.test(place)
      ? [place]
      : readdirSync(join(source, place), { recursive: true, encoding: "utf8" })
          .filter((file) => /\.(ts|wasm)$/.test(file))
          .map((file) => join(place, file)),
  );
  const { dependencies } = JSON.parse(readFileSync(join(source, "..", "package.json"), "utf8"));
  return contentKey(
    JSON.stringify(dependencies),
    ...files.sort().flatMap((file) => [file, readFileSync(join(source, file))]),
  );
}
