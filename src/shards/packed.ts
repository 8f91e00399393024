import { deserialize, serialize } from "node:v8";
import { deflateRawSync, inflateRawSync } from "node:zlib";

/** Values that stay unpacked, over all of them: enough for what a piece of work looks at by turns. */
const mostUnpacked = 8;

/**
 * A value that is held compressed while nobody looks at it: what a corpus of hundreds of thousands lists takes a tenth of
 * the memory. `value` unpacks it, a copy of what went in, and keeps it until some others have been looked at.
 * For plain data, typed arrays, maps and sets.
 */
export class Packed<T extends object> {
  static readonly #unpacked: Packed<object>[] = [];
  readonly #bytes: Uint8Array;
  #value: T | null = null;

  constructor(value: T) {
    this.#bytes = Uint8Array.from(deflateRawSync(serialize(value)));
  }

  get value(): T {
    if (this.#value !== null) return this.#value;
    const value = deserialize(inflateRawSync(this.#bytes)) as T;
    this.#value = value;
    Packed.#unpacked.push(this);
    if (Packed.#unpacked.length > mostUnpacked) Packed.#unpacked.shift()!.#value = null;
    return value;
  }
}
