import { asyncBufferFromFile, parquetMetadataAsync, parquetRead } from "hyparquet";
import * as messages from "../messages/results.ts";
import { UserError } from "../messages/userError.ts";
import { schemaVersion } from "./schemaVersion.ts";

/** The columns of a Parquet file that a run wrote, by name; refuses a file of another table version. */
export async function readColumns(
  path: string,
  names?: readonly string[],
): Promise<Record<string, unknown[]>> {
  const file = await asyncBufferFromFile(path);
  const metadata = await parquetMetadataAsync(file);
  const found = metadata.key_value_metadata?.find(({ key }) => key === "schemaVersion")?.value ?? "none";
  if (found !== String(schemaVersion))
    throw new UserError(messages.schemaOutdated(path, found, schemaVersion));
  const columns: Record<string, unknown[]> = {};
  await parquetRead({
    file,
    metadata,
    ...(names === undefined ? {} : { columns: [...names] }),
    onChunk: ({ columnName, columnData, rowStart }) => {
      const column = columns[columnName] ?? new Array(Number(metadata.num_rows));
      columns[columnName] = column;
      for (let i = 0; i < columnData.length; i++) column[rowStart + i] = columnData[i];
    },
  });
  return columns;
}
