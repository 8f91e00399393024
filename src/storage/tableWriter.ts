import {
  type DuckDBAppender,
  type DuckDBConnection,
  DuckDBDataChunk,
  type DuckDBValue,
} from "@duckdb/node-api";
import type { Columns } from "../measures/column.ts";
import type { ColumnValues } from "./columnValues.ts";
import { createTableSql, duckdbTypes } from "./duckdb.ts";

const chunkRows = 2048;
/** Chunks that the database may hold in the appender, whose rows its memory limit does not put on disk. */
const chunksInHand = 8;

/** Appends rows to one table in chunks of columns: ten times faster than row by row, and memory stays flat. */
export class TableWriter<R extends object> {
  readonly rowsWritten = (): number => this.#written + this.#rows;
  readonly #appender: DuckDBAppender;
  readonly #chunk: DuckDBDataChunk;
  readonly #names: readonly string[];
  readonly #values: DuckDBValue[][];
  #rows = 0;
  #chunks = 0;
  #written = 0;

  private constructor(appender: DuckDBAppender, columns: Columns) {
    this.#appender = appender;
    this.#names = Object.keys(columns);
    this.#chunk = DuckDBDataChunk.create(Object.values(columns).map(({ type }) => duckdbTypes[type]));
    this.#values = this.#names.map(() => new Array<DuckDBValue>(chunkRows));
  }

  static async create<R extends object>(
    connection: DuckDBConnection,
    name: string,
    columns: Columns,
  ): Promise<TableWriter<R>> {
    await connection.run(createTableSql(name, columns));
    return new TableWriter<R>(await connection.createAppender(name), columns);
  }

  append(row: R): void {
    for (let column = 0; column < this.#names.length; column++)
      this.#values[column]![this.#rows] = (row as Record<string, DuckDBValue>)[this.#names[column]!]!;
    if (++this.#rows === chunkRows) this.#flush();
  }

  /** Appends rows that come column by column; `more` holds columns that they lack. */
  appendColumns({ rows, values }: ColumnValues, more: ColumnValues["values"] = {}): void {
    const from = this.#names.map((name) => more[name] ?? values[name]!);
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < from.length; column++)
        this.#values[column]![this.#rows] = from[column]![row] as DuckDBValue;
      if (++this.#rows === chunkRows) this.#flush();
    }
  }

  /** Writes what is buffered; no row may follow. */
  close(): void {
    this.#flush();
    this.#appender.closeSync();
  }

  #flush(): void {
    if (this.#rows === 0) return;
    const rows = this.#rows;
    this.#chunk.reset();
    this.#chunk.rowCount = rows;
    for (let column = 0; column < this.#names.length; column++) {
      const values = this.#values[column]!;
      this.#chunk.setColumnValues(column, rows === chunkRows ? values : values.slice(0, rows));
    }
    this.#appender.appendDataChunk(this.#chunk);
    this.#written += rows;
    this.#rows = 0;
    if (++this.#chunks % chunksInHand === 0) this.#appender.flushSync();
  }
}
