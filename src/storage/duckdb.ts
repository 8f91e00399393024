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

export interface Database {
  readonly connection: DuckDBConnection;
  /** Gives its memory back. */
  readonly close: () => void;
}

/** A database file that spills to disk beyond `memoryLimitMb`. One thread: sums in a fixed order. */
export async function createDatabase(path: string, memoryLimitMb: number): Promise<Database> {
  const instance = await DuckDBInstance.create(path, {
    memory_limit: `${memoryLimitMb}MB`,
    threads: "1",
    autoinstall_known_extensions: "false",
    autoload_known_extensions: "false",
  });
  const connection = await DuckDBConnection.create(instance);
  return {
    connection,
    close: () => {
      connection.closeSync();
      instance.closeSync();
    },
  };
}

/** A connection to a database that is small enough to wait for the garbage collection once it is closed. */
export async function openDatabase(path: string, memoryLimitMb: number): Promise<DuckDBConnection> {
  return (await createDatabase(path, memoryLimitMb)).connection;
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
