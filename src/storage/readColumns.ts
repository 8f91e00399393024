import {
  type AsyncBuffer,
  asyncBufferFromFile,
  type FileMetaData,
  parquetMetadataAsync,
  parquetRead,
} from "hyparquet";
import * as messages from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { schemaVersion } from "./schemaVersion.ts";

/** The columns of a Parquet file that a run wrote, by name; refuses a file of another table version. */
export async function readColumns(
  path: string,
  names?: readonly string[],
): Promise<Record<string, unknown[]>> {
  const { file, metadata } = await openTable(path);
  return readRows(file, metadata, 0, Number(metadata.num_rows), names);
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
    yield await readRows(file, metadata, start, end, names);
    start = end;
  }
}

/** Rows of a table, as its file says. */
export async function rowsOfTable(path: string): Promise<number> {
  return Number((await openTable(path)).metadata.num_rows);
}

async function openTable(path: string): Promise<{ file: AsyncBuffer; metadata: FileMetaData }> {
  const file = await asyncBufferFromFile(path);
  const metadata = await parquetMetadataAsync(file);
  const found = metadata.key_value_metadata?.find(({ key }) => key === "schemaVersion")?.value ?? "none";
  if (found !== String(schemaVersion))
    throw new UserError(messages.schemaOutdated(path, found, schemaVersion));
  return { file, metadata };
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
