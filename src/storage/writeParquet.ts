import { rename, rm } from "node:fs/promises";
import type { DuckDBConnection } from "@duckdb/node-api";
import type { Columns } from "../measures/column.ts";
import { syncFile } from "./atomicFile.ts";
import { literal } from "./duckdb.ts";
import { schemaVersion } from "./schemaVersion.ts";

/**
 * Writes the rows of a query as one Parquet file, with unit, description, source and missing-value meaning of every
 * column in the file's key-value metadata (`columns`, JSON). The file appears whole or not at all.
 */
export async function writeParquet(
  connection: DuckDBConnection,
  query: string,
  columns: Columns,
  path: string,
): Promise<void> {
  const partial = `${path}.partial.tmp`;
  const metadata = `{columns: ${literal(JSON.stringify(columns))}, schemaVersion: ${literal(String(schemaVersion))}}`;
  try {
    await connection.run(
      `copy (${query}) to ${literal(partial)} (format parquet, compression snappy, kv_metadata ${metadata})`,
    );
    await syncFile(partial);
    await rename(partial, path);
  } finally {
    await rm(partial, { force: true });
  }
}
