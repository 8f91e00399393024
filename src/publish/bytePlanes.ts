type Numbers = Uint8Array | Uint16Array | Uint32Array | Float64Array;
interface NumbersType<T extends Numbers> {
  readonly BYTES_PER_ELEMENT: number;
  new (length: number): T;
}

const cutShort = "the bytes are cut short";

/**
 * Writes columns of numbers byte plane by byte plane: all first bytes, then all second bytes. Like bytes stand together
 * then, which a compressor likes. Little-endian, as every machine with a browser is.
 */
export class ByteWriter {
  readonly #parts: Uint8Array[] = [];

  constructor(magic: string) {
    this.#parts.push(new TextEncoder().encode(magic));
  }

  json(value: unknown): void {
    this.#sized(new TextEncoder().encode(JSON.stringify(value)), 1);
  }

  numbers(values: Numbers): void {
    const width = values.BYTES_PER_ELEMENT;
    const raw = new Uint8Array(values.buffer, values.byteOffset, values.byteLength);
    const planes = new Uint8Array(raw.length);
    for (let plane = 0; plane < width; plane++)
      for (let i = 0; i < values.length; i++) planes[plane * values.length + i] = raw[i * width + plane]!;
    this.#sized(planes, width);
  }

  /** Whole numbers from 0 on, in as few bytes as the largest needs. */
  integers(values: ArrayLike<number>): void {
    let largest = 0;
    for (let i = 0; i < values.length; i++) if (values[i]! > largest) largest = values[i]!;
    const type = largest < 256 ? Uint8Array : largest < 65536 ? Uint16Array : Uint32Array;
    this.numbers(type.from(values));
  }

  bytes(): Uint8Array {
    const made = new Uint8Array(this.#parts.reduce((sum, part) => sum + part.length, 0));
    let at = 0;
    for (const part of this.#parts) {
      made.set(part, at);
      at += part.length;
    }
    return made;
  }

  #sized(bytes: Uint8Array, width: number): void {
    this.#parts.push(new Uint8Array(Uint32Array.of(bytes.length, width).buffer), bytes);
  }
}

/** Reads what a ByteWriter wrote, in the same order. Throws when the bytes are something else or cut short. */
export class ByteReader {
  readonly #bytes: Uint8Array;
  #at: number;

  constructor(bytes: ArrayBuffer, magic: string) {
    this.#bytes = new Uint8Array(bytes);
    this.#at = magic.length;
    if (new TextDecoder().decode(this.#bytes.subarray(0, magic.length)) !== magic)
      throw new Error("the bytes are not of the expected kind");
  }

  json(): unknown {
    return JSON.parse(new TextDecoder().decode(this.#next().bytes));
  }

  numbers<T extends Numbers>(type: NumbersType<T>): T {
    const { bytes, width } = this.#next();
    if (width !== type.BYTES_PER_ELEMENT)
      throw new Error(`a column of ${width} bytes a number was not expected`);
    const made = new type(bytes.length / width);
    const raw = new Uint8Array(made.buffer);
    for (let plane = 0; plane < width; plane++)
      for (let i = 0; i < made.length; i++) raw[i * width + plane] = bytes[plane * made.length + i]!;
    return made;
  }

  /** Whole numbers of whatever width they were written in. */
  integers(): Uint8Array | Uint16Array | Uint32Array {
    const width = this.#view().getUint32(4, true);
    if (width === 1) return this.numbers(Uint8Array);
    return width === 2 ? this.numbers(Uint16Array) : this.numbers(Uint32Array);
  }

  #view(): DataView {
    if (this.#at + 8 > this.#bytes.length) throw new Error(cutShort);
    return new DataView(this.#bytes.buffer, this.#bytes.byteOffset + this.#at);
  }

  #next(): { bytes: Uint8Array; width: number } {
    const view = this.#view();
    const [length, width] = [view.getUint32(0, true), view.getUint32(4, true)];
    const from = this.#at + 8;
    this.#at = from + length;
    if (this.#at > this.#bytes.length) throw new Error(cutShort);
    return { bytes: this.#bytes.subarray(from, this.#at), width };
  }
}
