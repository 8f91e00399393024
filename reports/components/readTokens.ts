import { parquetRead } from "hyparquet";
import type { ColumnArrays } from "../../src/estimates/cellsFromColumns.ts";

/**
 * Columns of the tokens from the bytes of `tokens.parquet`, each an array with one value a token, null where missing.
 * Names, units and what a missing value means are on the Dictionary page. Without `columns` all of them.
 */
export async function readTokens(bytes: ArrayBuffer, columns?: readonly string[]): Promise<ColumnArrays> {
  const read: Record<string, unknown[]> = {};
  await parquetRead({
    file: bytes,
    ...(columns === undefined ? {} : { columns: [...columns] }),
    onChunk({ columnName, columnData, rowStart }) {
      read[columnName] ??= [];
      const column = read[columnName];
      for (let i = 0; i < columnData.length; i++) column[rowStart + i] = columnData[i];
    },
  });
  return read;
}
