import type { CellDimension } from "../measures/columns.ts";

/** A categorical column: `labels[codes[i]]` is the value of row i; null stands for "unknown". */
export interface Dimension {
  readonly codes: Uint16Array | Uint32Array;
  readonly labels: readonly (string | null)[];
}

/**
 * The cells of a results folder, column by column, as every estimator reads them in terminal and page.
 * All arrays have `size` entries but the histogram's: row i owns `histogramMs[histogramStart[i] … histogramStart[i+1])`.
 */
export interface Cells {
  readonly size: number;
  /** Booleans are spelled `"true"`/`"false"`. */
  readonly dimensions: Readonly<Record<CellDimension | "devoicedBasis" | "timeBasis", Dimension>>;
  readonly tokens: Float64Array;
  readonly atFloor: Float64Array;
  readonly marked: Float64Array;
  readonly devoiced: Float64Array;
  readonly sumMs: Float64Array;
  readonly sumSquareMs: Float64Array;
  readonly sumLogMs: Float64Array;
  readonly sumSquareLogMs: Float64Array;
  readonly histogramStart: Uint32Array;
  readonly histogramMs: Uint16Array;
  readonly histogramTokens: Uint32Array;
}
