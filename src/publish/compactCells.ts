import type { Cells, Dimension } from "../estimates/cells.ts";
import { ByteReader, ByteWriter } from "./bytePlanes.ts";

/**
 * Cells as the pages load them: codes instead of names, and no sum that follows from whole milliseconds. What is left is
 * laid out so that it compresses well. Format 1: the magic, then columns in the order of `encodeCells`.
 */
const magic = "morascope-cells-1\n";

const sums = ["sumMs", "sumSquareMs", "sumLogMs", "sumSquareLogMs"] as const;

/** How far a sum may be from what the histogram gives, relative, to count as following from it. */
const tolerance = 1e-12;

/** How the sums of a cell are kept: not at all, as its one duration, or all four. */
const kinds = { whole: 0, single: 1, all: 2 } as const;

/** The four sums of a cell whose durations are whole ms, written into `made` in the order of `sums`. */
function fromHistogram(
  { ms, tokens, logs }: { ms: Uint16Array; tokens: Uint32Array; logs: Float64Array },
  start: number,
  end: number,
  made: Float64Array,
): void {
  let [sum, square, sumLog, squareLog] = [0, 0, 0, 0];
  for (let i = start; i < end; i++) {
    const duration = ms[i]!;
    const count = tokens[i]!;
    const log = logs[duration]!;
    sum += count * duration;
    square += count * duration * duration;
    sumLog += count * log;
    squareLog += count * log * log;
  }
  made[0] = sum;
  made[1] = square;
  made[2] = sumLog;
  made[3] = squareLog;
}

const wholeLogs = (longestMs: number) =>
  Float64Array.from({ length: longestMs + 1 }, (_, ms) => Math.log(ms));
const close = (a: number, b: number) => Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a));

function longest(ms: Uint16Array): number {
  let most = 0;
  for (const duration of ms) if (duration > most) most = duration;
  return most;
}

/** Differences within each cell instead of the durations themselves: small numbers compress better. */
function differences(start: Uint32Array, values: ArrayLike<number>): Uint16Array {
  const made = new Uint16Array(values.length);
  for (let cell = 0; cell + 1 < start.length; cell++) {
    let last = 0;
    for (let i = start[cell]!; i < start[cell + 1]!; i++) {
      made[i] = values[i]! - last;
      last = values[i]!;
    }
  }
  return made;
}

/** The bytes of cells, before compression. */
export function encodeCells(cells: Cells): Uint8Array {
  const { size, histogramStart, histogramMs, histogramTokens } = cells;
  const histogram = { ms: histogramMs, tokens: histogramTokens, logs: wholeLogs(longest(histogramMs)) };
  const whole = new Float64Array(4);
  const kind = new Uint8Array(size);
  const kept: number[] = [];
  const lengths = new Uint32Array(size);
  for (let cell = 0; cell < size; cell++) {
    const [start, end] = [histogramStart[cell]!, histogramStart[cell + 1]!];
    lengths[cell] = end - start;
    fromHistogram(histogram, start, end, whole);
    if (sums.every((name, i) => close(cells[name][cell]!, whole[i]!))) kind[cell] = kinds.whole;
    else if (cells.tokens[cell] === 1) kind[cell] = kinds.single;
    else kind[cell] = kinds.all;
    if (kind[cell] === kinds.single) kept.push(cells.sumMs[cell]!);
    if (kind[cell] === kinds.all) kept.push(...sums.map((name) => cells[name][cell]!));
  }
  const writer = new ByteWriter(magic);
  const labels = Object.fromEntries(
    Object.entries(cells.dimensions).map(([name, { labels }]) => [name, labels]),
  );
  writer.json({ size, labels });
  for (const { codes } of Object.values(cells.dimensions)) writer.integers(codes);
  for (const name of ["tokens", "atFloor", "marked", "devoiced"] as const) writer.integers(cells[name]);
  writer.integers(lengths);
  writer.integers(differences(histogramStart, histogramMs));
  writer.integers(histogramTokens);
  writer.integers(kind);
  writer.numbers(Float64Array.from(kept));
  return writer.bytes();
}

/** Cells from what `encodeCells` wrote. Throws when the bytes are no such cells. */
export function decodeCells(bytes: ArrayBuffer): Cells {
  const reader = new ByteReader(bytes, magic);
  const { size, labels } = reader.json() as { size: number; labels: Record<string, (string | null)[]> };
  const dimensions = Object.fromEntries(
    Object.entries(labels).map(([name, labels]): [string, Dimension] => [
      name,
      { codes: codesOf(reader, size), labels },
    ]),
  );
  const counts = () => new Float64Array(reader.integers());
  const [tokens, atFloor, marked, devoiced] = [counts(), counts(), counts(), counts()];
  const lengths = reader.integers();
  const histogramMs = new Uint16Array(reader.integers());
  const histogramTokens = new Uint32Array(reader.integers());
  const kind = reader.integers();
  const kept = reader.numbers(Float64Array);
  const histogramStart = new Uint32Array(size + 1);
  for (let cell = 0; cell < size; cell++) {
    const start = histogramStart[cell]!;
    const end = start + lengths[cell]!;
    histogramStart[cell + 1] = end;
    for (let i = start + 1; i < end; i++) histogramMs[i] = histogramMs[i]! + histogramMs[i - 1]!;
  }
  const histogram = { ms: histogramMs, tokens: histogramTokens, logs: wholeLogs(longest(histogramMs)) };
  const [sumMs, sumSquareMs, sumLogMs, sumSquareLogMs] = sums.map(() => new Float64Array(size)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const four = new Float64Array(4);
  let next = 0;
  for (let cell = 0; cell < size; cell++) {
    if (kind[cell] === kinds.whole)
      fromHistogram(histogram, histogramStart[cell]!, histogramStart[cell + 1]!, four);
    else if (kind[cell] === kinds.single) {
      const ms = kept[next++]!;
      const log = Math.log(ms);
      four[0] = ms;
      four[1] = ms * ms;
      four[2] = log;
      four[3] = log * log;
    } else for (let i = 0; i < 4; i++) four[i] = kept[next++]!;
    sumMs[cell] = four[0]!;
    sumSquareMs[cell] = four[1]!;
    sumLogMs[cell] = four[2]!;
    sumSquareLogMs[cell] = four[3]!;
  }
  return {
    ...{ size, dimensions: dimensions as Cells["dimensions"], tokens, atFloor, marked, devoiced },
    ...{ sumMs, sumSquareMs, sumLogMs, sumSquareLogMs, histogramStart, histogramMs, histogramTokens },
  };
}

function codesOf(reader: ByteReader, size: number): Uint16Array | Uint32Array {
  const codes = reader.integers();
  if (codes.length !== size) throw new Error(`a column holds ${codes.length} of ${size} cells`);
  return codes.BYTES_PER_ELEMENT === 4 ? (codes as Uint32Array) : new Uint16Array(codes);
}

/** True for bytes that `encodeCells` wrote. */
export function isCompact(bytes: ArrayBuffer): boolean {
  const start = new Uint8Array(bytes, 0, Math.min(magic.length, bytes.byteLength));
  return new TextDecoder().decode(start) === magic;
}
