import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { deserialize, serialize } from "node:v8";

/**
 * Keeps what was worked out, under a key made of everything it depends on: the same recording, parameters and code
 * give it back, anything else is worked out anew. A damaged entry counts as missing.
 */
export class ContentCache {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  get<T>(key: string): T | null {
    const path = this.#pathOf(key);
    try {
      const bytes = readFileSync(path);
      const sum = bytes.subarray(0, sumBytes);
      const body = bytes.subarray(sumBytes);
      return sum.equals(sumOf(body)) ? (deserialize(body) as T) : null;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
      rmSync(path, { force: true });
      return null;
    }
  }

  set(key: string, value: unknown): void {
    const path = this.#pathOf(key);
    mkdirSync(dirname(path), { recursive: true });
    const body = serialize(value);
    const partial = `${path}.${process.pid}.tmp`;
    try {
      writeFileSync(partial, Buffer.concat([sumOf(body), body]));
      renameSync(partial, path);
    } finally {
      rmSync(partial, { force: true });
    }
  }

  #pathOf(key: string): string {
    return join(this.#folder, key.slice(0, 2), key);
  }
}

const sumBytes = 32;

function sumOf(body: Uint8Array): Buffer {
  return createHash("sha256").update(body).digest();
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

/** Stands for the code of some folders of `src`: whatever they work out is worked out anew when they change. */
export function codeVersion(folders: readonly string[]): string {
  const files = folders.flatMap((folder) =>
    readdirSync(join(source, folder), { recursive: true, encoding: "utf8" })
      .filter((file) => /\.(ts|wasm)$/.test(file))
      .map((file) => join(folder, file)),
  );
  return contentKey(...files.sort().flatMap((file) => [file, readFileSync(join(source, file))]));
}
