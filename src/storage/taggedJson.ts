/**
 * Text of plain data with typed arrays and numbers that JSON has no word for. The same data gives the same text, and
 * the text gives the same data to the last bit.
 */
export function toTaggedJson(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) => {
    if (typeof one === "number")
      return sayable(one) ? one : { $number: Object.is(one, -0) ? "-0" : String(one) };
    if (!ArrayBuffer.isView(one)) return one;
    const bytes = Buffer.from(one.buffer, one.byteOffset, one.byteLength);
    return { $array: one.constructor.name, bytes: bytes.toString("base64") };
  });
}

/** Reads what `toTaggedJson` wrote; throws SyntaxError for anything else. */
export function fromTaggedJson(text: string): unknown {
  return JSON.parse(text, (_, one: unknown) => {
    if (typeof one !== "object" || one === null) return one;
    if ("$number" in one) return Number(one.$number);
    if (!("$array" in one && "bytes" in one)) return one;
    const make = arrays.get(one.$array);
    if (make === undefined) throw new SyntaxError(`no array of the kind ${String(one.$array)}`);
    const bytes = Uint8Array.from(Buffer.from(String(one.bytes), "base64"));
    return make(bytes.buffer);
  });
}

function sayable(value: number): boolean {
  return Number.isFinite(value) && !Object.is(value, -0);
}

const arrays = new Map<unknown, (bytes: ArrayBuffer) => ArrayBufferView>([
  ["Float64Array", (bytes: ArrayBuffer) => new Float64Array(bytes)],
  ["Float32Array", (bytes: ArrayBuffer) => new Float32Array(bytes)],
  ["Int32Array", (bytes: ArrayBuffer) => new Int32Array(bytes)],
  ["Uint8Array", (bytes: ArrayBuffer) => new Uint8Array(bytes)],
]);
