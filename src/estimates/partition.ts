import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";

/** Selected cells sorted into parts that share their labels in `dims`; parts are in the order of their codes. */
export interface Partition {
  readonly dims: readonly Dim[];
  readonly count: number;
  /** Part of each cell, −1 for a cell that is not selected. */
  readonly partOf: Int32Array;
  /** `count` rows of `dims.length` codes. */
  readonly codes: Uint32Array;
}

/** A lookup table of up to this many entries is quicker than a hash map. */
const denseLimit = 1 << 22;

/** Sorts the cells with a 1 in `mask` into parts. Parts that share their first dims stand side by side. */
export function partition(cells: Cells, mask: Uint8Array, dims: readonly Dim[]): Partition {
  const columns = dims.map((dim) => cells.dimensions[dim]);
  const strides = new Float64Array(dims.length);
  let keys = 1;
  for (let d = dims.length - 1; d >= 0; d--) {
    strides[d] = keys;
    keys *= columns[d]!.labels.length;
  }
  const keyOf = new Float64Array(cells.size);
  for (let d = 0; d < dims.length; d++) {
    const codes = columns[d]!.codes;
    const stride = strides[d]!;
    for (let i = 0; i < keyOf.length; i++) keyOf[i]! += codes[i]! * stride;
  }
  const partOf = new Int32Array(cells.size).fill(-1);
  const found =
    keys <= denseLimit ? numberDense(keyOf, mask, partOf, keys) : numberSparse(keyOf, mask, partOf);
  const codes = new Uint32Array(found.length * dims.length);
  for (let part = 0; part < found.length; part++) {
    for (let d = 0; d < dims.length; d++)
      codes[part * dims.length + d] = Math.floor(found[part]! / strides[d]!) % columns[d]!.labels.length;
  }
  return { dims, count: found.length, partOf, codes };
}

/** Numbers the keys that occur in ascending order; returns them. */
function numberDense(keyOf: Float64Array, mask: Uint8Array, partOf: Int32Array, keys: number): number[] {
  const partOfKey = new Int32Array(keys).fill(-1);
  for (let i = 0; i < keyOf.length; i++) if (mask[i] === 1) partOfKey[keyOf[i]!] = 0;
  const found: number[] = [];
  for (let key = 0; key < keys; key++) if (partOfKey[key] === 0) partOfKey[key] = found.push(key) - 1;
  for (let i = 0; i < keyOf.length; i++) if (mask[i] === 1) partOf[i] = partOfKey[keyOf[i]!]!;
  return found;
}

function numberSparse(keyOf: Float64Array, mask: Uint8Array, partOf: Int32Array): ArrayLike<number> {
  const seen = new Set<number>();
  for (let i = 0; i < keyOf.length; i++) if (mask[i] === 1) seen.add(keyOf[i]!);
  const found = Float64Array.from(seen).sort();
  const partOfKey = new Map<number, number>();
  for (let part = 0; part < found.length; part++) partOfKey.set(found[part]!, part);
  for (let i = 0; i < keyOf.length; i++) if (mask[i] === 1) partOf[i] = partOfKey.get(keyOf[i]!)!;
  return found;
}

/** Sum of a column over the cells of each part. */
export function sumByPart({ partOf, count }: Partition, column: Float64Array): Float64Array {
  const sums = new Float64Array(count);
  for (let i = 0; i < partOf.length; i++) if (partOf[i]! >= 0) sums[partOf[i]!]! += column[i]!;
  return sums;
}

/** Runs of parts that share their first `depth` codes, as `[from, to)`. */
export function runsOf(
  { count, codes, dims }: Partition,
  depth: number,
  from = 0,
  to = count,
): [number, number][] {
  const runs: [number, number][] = [];
  for (let start = from; start < to; ) {
    let end = start + 1;
    while (end < to && sharesCodes(codes, dims.length, start, end, depth)) end++;
    runs.push([start, end]);
    start = end;
  }
  return runs;
}

function sharesCodes(codes: Uint32Array, width: number, a: number, b: number, depth: number): boolean {
  for (let d = 0; d < depth; d++) if (codes[a * width + d] !== codes[b * width + d]) return false;
  return true;
}

/** Label of a part in one of its dims. */
export function labelOf(cells: Cells, parts: Partition, part: number, dim: Dim): string | null {
  const d = parts.dims.indexOf(dim);
  return cells.dimensions[dim].labels[parts.codes[part * parts.dims.length + d]!]!;
}
