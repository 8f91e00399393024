import { deserialize, serialize } from "node:v8";
import { deflateRawSync, inflateRawSync } from "node:zlib";

/**
 * A value that is held compressed while nobody looks at it: what a corpus of hundreds of thousands lists takes a tenth of
 * the memory. `value` unpacks it, a copy of what went in, and keeps it only as long as the garbage collection lets it.
 * For plain data, typed arrays, maps and sets.
 */
export class Packed<T extends object> {
  readonly #bytes: Uint8Array;
  #latest: WeakRef<T> | null = null;

  constructor(value: T) {
    this.#bytes = Uint8Array.from(deflateRawSync(serialize(value)));
  }

  get value(): T {
    const latest = this.#latest?.deref();
    if (latest !== undefined) return latest;
    const value = deserialize(inflateRawSync(this.#bytes)) as T;
    this.#latest = new WeakRef(value);
    return value;
  }
}
