import {
  type AsyncBuffer,
  asyncBufferFromFile,
  type FileMetaData,
  parquetMetadataAsync,
  parquetRead,
} from "hyparquet";
import { machineFault } from "../messages/machine.ts";
import * as messages from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { collectWhenGrown } from "./collectGarbage.ts";
import { schemaVersion } from "./schemaVersion.ts";

/** The columns of a Parquet file that a run wrote, by name; refuses a file of another table version. */
export async function readColumns(
  path: string,
  names?: readonly string[],
): Promise<Record<string, unknown[]>> {
  const { file, metadata } = await openTable(path);
  return ofTable(path, () => readRows(file, metadata, 0, Number(metadata.num_rows), names));
}

/** The same, a piece of the rows at a time and one after the other, so that memory holds one of them. */
export async function* readPieces(
  path: string,
  names: readonly string[],
): AsyncGenerator<Record<string, unknown[]>> {
  const { file, metadata } = await openTable(path);
  let start = 0;
  for (const { num_rows } of metadata.row_groups) {
    const end = start + Number(num_rows);
    yield await ofTable(path, () => readRows(file, metadata, start, end, names));
    await collectWhenGrown();
    start = end;
  }
}

/** Rows of a table, as its file says. */
export async function rowsOfTable(path: string): Promise<number> {
  return Number((await openTable(path)).metadata.num_rows);
}

async function openTable(path: string): Promise<{ file: AsyncBuffer; metadata: FileMetaData }> {
  const { file, metadata } = await ofTable(path, async () => {
    const bytes = await asyncBufferFromFile(path);
    return { file: bytes, metadata: await parquetMetadataAsync(bytes) };
  });
  const found = metadata.key_value_metadata?.find(({ key }) => key === "schemaVersion")?.value ?? "none";
  if (found !== String(schemaVersion))
    throw new UserError(messages.schemaOutdated(path, found, schemaVersion));
  return { file, metadata };
}

/** What `work` gives; what the reader stumbles over in the file is told as a damaged table. */
async function ofTable<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (machineFault(error) !== null) throw error;
    throw new UserError(messages.tableDamaged(path, error instanceof Error ? error.message : String(error)));
  }
}

async function readRows(
  file: AsyncBuffer,
  metadata: FileMetaData,
  start: number,
  end: number,
  names: readonly string[] | undefined,
): Promise<Record<string, unknown[]>> {
  const columns: Record<string, unknown[]> = {};
  await parquetRead({
    file,
    metadata,
    rowStart: start,
    rowEnd: end,
    ...(names === undefined ? {} : { columns: [...names] }),
    onChunk: ({ columnName, columnData, rowStart }) => {
      const column = columns[columnName] ?? new Array(end - start);
      columns[columnName] = column;
      for (let i = 0; i < columnData.length; i++) column[rowStart - start + i] = columnData[i];
    },
  });
  return columns;
}
