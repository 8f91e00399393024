import { closeSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { deserialize, serialize } from "node:v8";

/**
 * A list that lives on disk and not in memory, in the order in which values were added. Values are plain data and
 * typed arrays. Its file belongs to the scratch space of one run and is gone after `close`.
 */
export class DiskList<T> {
  readonly #path: string;
  readonly #file: number;
  readonly #starts: number[] = [0];

  constructor(path: string) {
    this.#path = path;
    this.#file = openSync(path, "w+");
  }

  get size(): number {
    return this.#starts.length - 1;
  }

  /** Adds a value and returns its place in the list. */
  add(value: T): number {
    const bytes = serialize(value);
    const start = this.#starts.at(-1)!;
    for (let written = 0; written < bytes.length; )
      written += writeSync(this.#file, bytes, written, bytes.length - written, start + written);
    return this.#starts.push(start + bytes.length) - 2;
  }

  /** A fresh copy of the value at a place. */
  get(place: number): T {
    const start = this.#starts[place];
    const end = this.#starts[place + 1];
    if (start === undefined || end === undefined)
      throw new RangeError(`no value at ${place} of ${this.size}`);
    const bytes = Buffer.allocUnsafe(end - start);
    for (let read = 0; read < bytes.length; ) {
      const count = readSync(this.#file, bytes, read, bytes.length - read, start + read);
      if (count === 0) throw new Error(`${this.#path} ends early`);
      read += count;
    }
    return deserialize(bytes) as T;
  }

  close(): void {
    closeSync(this.#file);
    rmSync(this.#path, { force: true });
  }
}
