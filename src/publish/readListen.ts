import { parquetMetadata, parquetRead } from "hyparquet";
import {
  type ListenCount,
  type ListenFlag,
  type ListenLabel,
  type ListenNumber,
  listenCounts,
  listenFlags,
  listenLabels,
  listenNumbers,
} from "./listenColumns.ts";

/** Tokens to look at, column by column: by utterance, label set and place in it. */
export interface ListenTable {
  readonly size: number;
  readonly counts: Readonly<Record<ListenCount, Int32Array>>;
  /** NaN where missing. */
  readonly numbers: Readonly<Record<ListenNumber, Float32Array>>;
  /** 1 yes, 0 no, −1 missing. */
  readonly flags: Readonly<Record<ListenFlag, Int8Array>>;
  /** Places in `names`; −1 where missing. */
  readonly codes: Readonly<Record<ListenLabel, Int32Array>>;
  readonly names: Readonly<Record<ListenLabel, readonly string[]>>;
}

type Write = (row: number, value: unknown) => void;

/** Reads a table of `chooseTokens` in a page or in Node; no bytes are an empty table. */
export async function readListen(bytes: ArrayBuffer): Promise<ListenTable> {
  const metadata = bytes.byteLength === 0 ? null : parquetMetadata(bytes);
  const size = Number(metadata?.num_rows ?? 0);
  const write = new Map<string, Write>();
  const numbers = columnsOf(Object.keys(listenNumbers) as ListenNumber[], (name) => {
    const column = new Float32Array(size).fill(Number.NaN);
    write.set(name, (row, value) => {
      if (value !== null && value !== undefined) column[row] = Number(value);
    });
    return column;
  });
  const flags = columnsOf(listenFlags, (name) => {
    const column = new Int8Array(size).fill(-1);
    write.set(name, (row, value) => {
      if (typeof value === "boolean") column[row] = value ? 1 : 0;
    });
    return column;
  });
  const counts = columnsOf(listenCounts, (name) => {
    const column = new Int32Array(size).fill(-1);
    write.set(name, (row, value) => {
      if (value !== null && value !== undefined) column[row] = Number(value);
    });
    return column;
  });
  const names = columnsOf(listenLabels, (): string[] => []);
  const codes = columnsOf(listenLabels, (name) => {
    const column = new Int32Array(size).fill(-1);
    const known = new Map<string, number>();
    write.set(name, (row, value) => {
      if (typeof value !== "string") return;
      const code = known.get(value) ?? names[name].push(value) - 1;
      known.set(value, code);
      column[row] = code;
    });
    return column;
  });
  if (metadata !== null)
    await parquetRead({
      file: bytes,
      metadata,
      columns: [...write.keys()],
      onChunk({ columnName, columnData, rowStart }) {
        const put = write.get(columnName)!;
        for (let i = 0; i < columnData.length; i++) put(rowStart + i, columnData[i]);
      },
    });
  return { size, counts, numbers, flags, codes, names };
}

function columnsOf<N extends string, C>(names: readonly N[], make: (name: N) => C): Record<N, C> {
  return Object.fromEntries(names.map((name) => [name, make(name)])) as Record<N, C>;
}

/** A name of a row; null where it is missing. */
export function labelAt({ codes, names }: ListenTable, name: ListenLabel, row: number): string | null {
  const code = codes[name][row]!;
  return code < 0 ? null : names[name][code]!;
}

/** A number of a row; null where it is missing. */
export function numberAt({ numbers }: ListenTable, name: ListenNumber, row: number): number | null {
  const value = numbers[name][row]!;
  return Number.isNaN(value) ? null : value;
}

/** Yes or no; null where it is missing. */
export function flagAt({ flags }: ListenTable, name: ListenFlag, row: number): boolean | null {
  const value = flags[name][row]!;
  return value < 0 ? null : value === 1;
}
