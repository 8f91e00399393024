import type { Cells } from "../estimates/cells.ts";
import { cellsFromColumns } from "../estimates/cellsFromColumns.ts";
import { cellColumns } from "../measures/columns.ts";
import { decodeCells, isCompact } from "./compactCells.ts";

async function readParquet(bytes: ArrayBuffer): Promise<Cells> {
  const { parquetRead } = await import("hyparquet");
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

const isGzip = (bytes: ArrayBuffer) => new DataView(bytes).getUint16(0) === 0x1f8b;

function unpack(bytes: ArrayBuffer): Promise<ArrayBuffer> {
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(unpacked).arrayBuffer();
}

/**
 * Cells from the bytes of `cells.parquet`, or of the compact file that sites carry in its place, in Node and in a page
 * alike. Throws when the bytes are neither, and a UserError when a column is missing.
 */
export async function readCells(bytes: ArrayBuffer): Promise<Cells> {
  const plain = bytes.byteLength > 2 && isGzip(bytes) ? await unpack(bytes) : bytes;
  return isCompact(plain) ? decodeCells(plain) : readParquet(plain);
}
