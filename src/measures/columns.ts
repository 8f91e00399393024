/** The one table of columns: types, Parquet metadata, data package, Dictionary page and axis labels all read it. */
import { acousticColumns } from "./acousticColumns.ts";
import { tokenColumns } from "./tokenColumns.ts";

export { type AcousticRow, acousticColumns } from "./acousticColumns.ts";
export { type CellDimension, type CellRow, cellColumns, cellDimensions } from "./cellColumns.ts";
export { type IntervalRow, intervalColumns } from "./intervalColumns.ts";
export { type TokenRow, tokenColumns } from "./tokenColumns.ts";
export { type UtteranceRow, utteranceColumns } from "./utteranceColumns.ts";

/** The whole of tokens.parquet: what labels and reading tell, then what the recording tells. */
export const tokenTableColumns = { ...tokenColumns, ...acousticColumns } as const;
