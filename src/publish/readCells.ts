import { parquetRead } from "hyparquet";
import type { Cells } from "../estimates/cells.ts";
import { cellsFromColumns } from "../estimates/cellsFromColumns.ts";
import { cellColumns } from "../measures/columns.ts";

/**
 * Cells from the bytes of `cells.parquet`, column by column, in Node and in a page alike.
 * Throws when the bytes are no Parquet file, and a UserError when a column is missing.
 */
export async function readCells(bytes: ArrayBuffer): Promise<Cells> {
  const columns: Record<string, unknown[]> = {};
  await parquetRead({
    file: bytes,
    columns: Object.keys(cellColumns),
    onChunk({ columnName, columnData, rowStart }) {
      columns[columnName] ??= [];
      const column = columns[columnName];
      for (let i = 0; i < columnData.length; i++) column[rowStart + i] = columnData[i];
    },
  });
  return cellsFromColumns(columns);
}
