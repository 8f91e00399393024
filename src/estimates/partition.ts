import type { Cells } from "./cells.ts";
import type { Dim } from "./dimensions.ts";
import type { Selection } from "./selection.ts";

/** Selected cells sorted into parts that share their labels in `dims`; parts are in the order of their codes. */
export interface Partition {
  readonly selection: Selection;
  readonly dims: readonly Dim[];
  readonly count: number;
  /** Part of each selected cell. */
  readonly partOf: Uint32Array;
  /** `count` rows of `dims.length` codes. */
  readonly codes: Uint32Array;
}

/** Above this many pairs of part and code a hash map takes the place of a table. */
const tableLimit = 1 << 24;

/** Sorts the selected cells into parts, one column after the other; parts that share their first dims stand side by side. */
export function partition(
  cells: Cells,
  selection: Selection,
  dims: readonly Dim[],
  limit = tableLimit,
): Partition {
  const partOf = new Uint32Array(selection.length);
  let count = Math.min(1, selection.length);
  let codes: Uint32Array = new Uint32Array(0);
  for (const [depth, dim] of dims.entries()) {
    const { codes: column, labels } = cells.dimensions[dim];
    const found = labels.length === 1 ? null : split(partOf, selection, column, count, labels.length, limit);
    codes = withColumn(codes, depth, found, count, labels.length);
    count = found?.length ?? count;
  }
  return { selection, dims, count, partOf, codes };
}

/** Splits each part by a column's codes, in place; returns part × labels + code of each new part, ascending. */
function split(
  partOf: Uint32Array,
  selection: Selection,
  column: Uint16Array | Uint32Array,
  count: number,
  labels: number,
  limit: number,
): ArrayLike<number> {
  if (count * labels > limit) return splitByMap(partOf, selection, column, labels);
  const newPart = new Uint32Array(count * labels);
  for (let i = 0; i < partOf.length; i++) {
    const key = partOf[i]! * labels + column[selection[i]!]!;
    partOf[i] = key;
    newPart[key] = 1;
  }
  const found: number[] = [];
  for (let key = 0; key < newPart.length; key++) if (newPart[key] === 1) newPart[key] = found.push(key) - 1;
  for (let i = 0; i < partOf.length; i++) partOf[i] = newPart[partOf[i]!]!;
  return found;
}

function splitByMap(
  partOf: Uint32Array,
  selection: Selection,
  column: Uint16Array | Uint32Array,
  labels: number,
): ArrayLike<number> {
  const keys = Float64Array.from(partOf, (part, i) => part * labels + column[selection[i]!]!);
  const found = Float64Array.from(new Set(keys)).sort();
  const newPart = new Map<number, number>();
  for (let part = 0; part < found.length; part++) newPart.set(found[part]!, part);
  for (let i = 0; i < partOf.length; i++) partOf[i] = newPart.get(keys[i]!)!;
  return found;
}

/** The table of codes with one more column; `found` null means that every part has code 0 in it. */
function withColumn(
  codes: Uint32Array,
  depth: number,
  found: ArrayLike<number> | null,
  count: number,
  labels: number,
): Uint32Array {
  const parts = found?.length ?? count;
  const wider = new Uint32Array(parts * (depth + 1));
  for (let part = 0; part < parts; part++) {
    const key = found === null ? part : found[part]!;
    const parent = found === null ? part : Math.floor(key / labels);
    for (let d = 0; d < depth; d++) wider[part * (depth + 1) + d] = codes[parent * depth + d]!;
    wider[part * (depth + 1) + depth] = found === null ? 0 : key % labels;
  }
  return wider;
}

/** Sum of a column over the cells of each part. */
export function sumByPart({ selection, partOf, count }: Partition, column: Float64Array): Float64Array {
  const sums = new Float64Array(count);
  for (let i = 0; i < partOf.length; i++) sums[partOf[i]!]! += column[selection[i]!]!;
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
