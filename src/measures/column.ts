/** Parquet types in use. `DOUBLE[]`-like list types are written by the storage toolbox. */
export type ColumnType = "VARCHAR" | "BOOLEAN" | "INTEGER" | "DOUBLE" | "INTEGER[]";

/** One column of a results table: what it holds, in which unit, and how the value is obtained. */
export interface Column {
  readonly type: ColumnType;
  /** Unit as it is printed (`ms`, `Hz`, `1`); null for labels. */
  readonly unit: string | null;
  readonly description: string;
  /** How the value is obtained: the method, the rule or the field of the dataset. */
  readonly source: string;
  /** What a missing value means; null when the column is never missing. */
  readonly missing: string | null;
}

export type Columns = Readonly<Record<string, Column>>;

type Value<T extends ColumnType> = T extends "VARCHAR"
  ? string
  : T extends "BOOLEAN"
    ? boolean
    : T extends "INTEGER[]"
      ? readonly number[]
      : number;

/** The row type of a column table: nullable exactly where `missing` says what null means. */
export type Row<C extends Columns> = {
  readonly [K in keyof C]: C[K]["missing"] extends string ? Value<C[K]["type"]> | null : Value<C[K]["type"]>;
};
