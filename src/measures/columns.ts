/** The one table of columns: types, Parquet metadata, data package, Dictionary page and axis labels all read it. */
export { type CellDimension, type CellRow, cellColumns, cellDimensions } from "./cellColumns.ts";
export { type IntervalRow, intervalColumns } from "./intervalColumns.ts";
export { type TokenRow, tokenColumns } from "./tokenColumns.ts";
export { type UtteranceRow, utteranceColumns } from "./utteranceColumns.ts";
