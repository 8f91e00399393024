import {
  BOOLEAN,
  DOUBLE,
  DuckDBConnection,
  DuckDBInstance,
  type DuckDBType,
  INTEGER,
  LIST,
  VARCHAR,
} from "@duckdb/node-api";
import type { Columns, ColumnType } from "../measures/column.ts";

export const duckdbTypes: Readonly<Record<ColumnType, DuckDBType>> = {
  VARCHAR,
  BOOLEAN,
  INTEGER,
  DOUBLE,
  "INTEGER[]": LIST(INTEGER),
};

/** A connection to a database file that spills to disk beyond `memoryLimitMb`. One thread: sums in a fixed order. */
export async function openDatabase(path: string, memoryLimitMb: number): Promise<DuckDBConnection> {
  const instance = await DuckDBInstance.create(path, {
    memory_limit: `${memoryLimitMb}MB`,
    threads: "1",
    autoinstall_known_extensions: "false",
    autoload_known_extensions: "false",
  });
  return DuckDBConnection.create(instance);
}

export function createTableSql(name: string, columns: Columns): string {
  const fields = Object.entries(columns).map(([column, { type }]) => `${identifier(column)} ${type}`);
  return `create or replace table ${identifier(name)} (${fields.join(", ")})`;
}

export function identifier(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

export function literal(text: string): string {
  return `'${text.replaceAll("'", "''")}'`;
}
