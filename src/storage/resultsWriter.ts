import { join } from "node:path";
import {
  type AcousticRow,
  acousticColumns,
  cellColumns,
  type IntervalRow,
  intervalColumns,
  type TokenRow,
  tokenColumns,
  tokenTableColumns,
  type UtteranceRow,
  utteranceColumns,
} from "../measures/columns.ts";
import type { ColumnValues } from "./columnValues.ts";
import { createDatabase, type Database, identifier } from "./duckdb.ts";
import { reduceToCells } from "./reduceToCells.ts";
import type { ResultsFolder } from "./resultsFolder.ts";
import { reviseTokens, type TokenRevision } from "./reviseTokens.ts";
import { TableWriter } from "./tableWriter.ts";
import { writeParquet } from "./writeParquet.ts";

export interface WrittenCounts {
  readonly utterances: number;
  readonly intervals: number;
  readonly tokens: number;
  readonly cells: number;
}

/** Rows of all tables, column by column. */
export interface TableRows {
  readonly utterances: ColumnValues;
  readonly intervals: ColumnValues;
  readonly tokens: ColumnValues;
  readonly acoustics: ColumnValues | null;
}

const tokenRow = {
  type: "INTEGER",
  unit: null,
  description: "Row of the token",
  source: "counted",
  missing: null,
} as const;

/** Where every token was measured, both tables have the same rows in the same order: nothing need be held to join them. */
const measuredTokens =
  'select tokens.*, acoustics.* exclude ("tokenRow") from tokens positional join acoustics';

/** Rows keep their order: a token's row number is the order in which it was appended. */
const partlyMeasuredTokens =
  'select tokens.*, acoustics.* exclude ("tokenRow") from tokens left join acoustics on acoustics."tokenRow" = tokens.rowid order by tokens.rowid';

const unmeasuredTokens = `select *, ${Object.entries(acousticColumns)
  .map(([name, { type }]) => `cast(null as ${type}) as ${identifier(name)}`)
  .join(", ")} from tokens`;

/**
 * Takes the rows of a run as they come and writes them as Parquet at the end.
 * Rows go to a database in the results folder's scratch space, so that memory stays flat whatever the corpus.
 */
export class ResultsWriter {
  readonly utterances: TableWriter<UtteranceRow>;
  readonly intervals: TableWriter<IntervalRow>;
  readonly tokens: TableWriter<TokenRow>;
  readonly #acoustics: TableWriter<AcousticRow & { readonly tokenRow: number }>;
  readonly #database: Database;
  readonly #results: ResultsFolder;

  private constructor(
    database: Database,
    results: ResultsFolder,
    tables: Pick<ResultsWriter, "utterances" | "intervals" | "tokens">,
    acoustics: TableWriter<AcousticRow & { readonly tokenRow: number }>,
  ) {
    this.#database = database;
    this.#results = results;
    this.utterances = tables.utterances;
    this.intervals = tables.intervals;
    this.tokens = tables.tokens;
    this.#acoustics = acoustics;
  }

  /** `memoryLimitMb` is the database's; rows in hand need a few MB more. */
  static async open(results: ResultsFolder, memoryLimitMb: number): Promise<ResultsWriter> {
    const database = await createDatabase(join(results.work, "tables.duckdb"), memoryLimitMb);
    const { connection } = database;
    const tables = {
      utterances: await TableWriter.create<UtteranceRow>(connection, "utterances", utteranceColumns),
      intervals: await TableWriter.create<IntervalRow>(connection, "intervals", intervalColumns),
      tokens: await TableWriter.create<TokenRow>(connection, "tokens", tokenColumns),
    };
    const columns = { tokenRow, ...acousticColumns };
    await connection.run("begin transaction");
    return new ResultsWriter(
      database,
      results,
      tables,
      await TableWriter.create<AcousticRow & { readonly tokenRow: number }>(connection, "acoustics", columns),
    );
  }

  /** Appends a token with what its recording tells of it. */
  appendMeasured(token: TokenRow, acoustics: AcousticRow): void {
    this.#acoustics.append({ tokenRow: this.tokens.rowsWritten(), ...acoustics });
    this.tokens.append(token);
  }

  /** Appends a shard's rows; `acoustics` holds a row for every token, or is null when nothing was measured. */
  appendRows({ utterances, intervals, tokens, acoustics }: TableRows): void {
    this.utterances.appendColumns(utterances);
    this.intervals.appendColumns(intervals);
    if (acoustics !== null) {
      const first = this.tokens.rowsWritten();
      const tokenRow = Array.from({ length: acoustics.rows }, (_, i) => first + i);
      this.#acoustics.appendColumns(acoustics, { tokenRow });
    }
    this.tokens.appendColumns(tokens);
  }

  /** Writes the four tables, tokens as `revision` has them; nothing may be appended after. */
  async finish(revision: TokenRevision | null = null): Promise<WrittenCounts> {
    this.utterances.close();
    this.intervals.close();
    this.tokens.close();
    this.#acoustics.close();
    await this.#database.connection.run("commit");
    const { connection } = this.#database;
    if (revision !== null) await reviseTokens(connection, revision);
    const write = (
      query: string,
      columns: Parameters<typeof writeParquet>[2],
      file: "utterances" | "intervals" | "tokens" | "cells",
    ) => writeParquet(connection, query, columns, this.#results.path(file));
    await write("from utterances", utteranceColumns, "utterances");
    await write("from intervals", intervalColumns, "intervals");
    await write(this.#tokensQuery(), tokenTableColumns, "tokens");
    const cells = await reduceToCells(connection);
    await write("from cells", cellColumns, "cells");
    return {
      utterances: this.utterances.rowsWritten(),
      intervals: this.intervals.rowsWritten(),
      tokens: this.tokens.rowsWritten(),
      cells,
    };
  }

  #tokensQuery(): string {
    const measured = this.#acoustics.rowsWritten();
    if (measured === 0) return unmeasuredTokens;
    return measured === this.tokens.rowsWritten() ? measuredTokens : partlyMeasuredTokens;
  }

  /** Lets go of the database, finished or not. */
  close(): void {
    this.#database.close();
  }
}
