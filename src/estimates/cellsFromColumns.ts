import { type CellDimension, cellDimensions } from "../measures/columns.ts";
import { missingCellColumn, raggedCellColumn } from "../messages/estimates.ts";
import { UserError } from "../messages/userError.ts";
import type { Cells, Dimension } from "./cells.ts";

/** Arrays by column name, all of one length, as a Parquet reader or a query gives them. */
export type ColumnArrays = Readonly<Record<string, ArrayLike<unknown>>>;

const countColumns = ["tokens", "atFloor", "marked", "devoiced"] as const;
const sumColumns = ["sumMs", "sumSquareMs", "sumLogMs", "sumSquareLogMs"] as const;
const labelColumns = [...cellDimensions, "devoicedBasis", "timeBasis"] as const;

/**
 * Cells from the columns of `cells.parquet`, whoever read them: booleans or their names, numbers or bigints,
 * lists as arrays, typed arrays or `{items}`. Throws a UserError when a column is missing or of another length.
 */
export function cellsFromColumns(columns: ColumnArrays): Cells {
  const size = columns.tokens?.length ?? 0;
  for (const name of [...labelColumns, ...countColumns, ...sumColumns, "histogramMs", "histogramTokens"]) {
    const column = columns[name];
    if (column === undefined) throw new UserError(missingCellColumn(name));
    if (column.length !== size) throw new UserError(raggedCellColumn(name, column.length, size));
  }
  const dimensions = Object.fromEntries(labelColumns.map((name) => [name, dimensionOf(columns[name]!)]));
  const numbers = (name: string) => Float64Array.from(columns[name]!, Number);
  return {
    size,
    dimensions: dimensions as Record<CellDimension | "devoicedBasis" | "timeBasis", Dimension>,
    tokens: numbers("tokens"),
    atFloor: numbers("atFloor"),
    marked: numbers("marked"),
    devoiced: numbers("devoiced"),
    sumMs: numbers("sumMs"),
    sumSquareMs: numbers("sumSquareMs"),
    sumLogMs: numbers("sumLogMs"),
    sumSquareLogMs: numbers("sumSquareLogMs"),
    ...histogramOf(columns.histogramMs!, columns.histogramTokens!),
  };
}

/** Labels sorted, null last, so that the same rows give the same codes in any order. */
function dimensionOf(values: ArrayLike<unknown>): Dimension {
  const codeOf = new Map<unknown, number>();
  const raw = new Uint32Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? null;
    let code = codeOf.get(value);
    if (code === undefined) {
      code = codeOf.size;
      codeOf.set(value, code);
    }
    raw[i] = code;
  }
  const labels = [...codeOf.keys()].map((value) => (value === null ? null : String(value)));
  const sorted = [...new Set(labels)].sort(byLabel);
  const place = new Map(sorted.map((label, i) => [label, i]));
  const newCode = Uint32Array.from(labels, (label) => place.get(label)!);
  const codes = sorted.length < 65536 ? new Uint16Array(raw.length) : new Uint32Array(raw.length);
  for (let i = 0; i < raw.length; i++) codes[i] = newCode[raw[i]!]!;
  return { codes, labels: sorted };
}

function byLabel(a: string | null, b: string | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  return a < b ? -1 : a > b ? 1 : 0;
}

function histogramOf(msLists: ArrayLike<unknown>, tokenLists: ArrayLike<unknown>) {
  const histogramStart = new Uint32Array(msLists.length + 1);
  for (let i = 0; i < msLists.length; i++)
    histogramStart[i + 1] = histogramStart[i]! + listOf(msLists[i]).length;
  const histogramMs = new Uint16Array(histogramStart[msLists.length]!);
  const histogramTokens = new Uint32Array(histogramMs.length);
  for (let i = 0; i < msLists.length; i++) {
    const start = histogramStart[i]!;
    const ms = listOf(msLists[i]);
    const tokens = listOf(tokenLists[i]);
    if (tokens.length !== ms.length)
      throw new UserError(raggedCellColumn("histogramTokens", tokens.length, ms.length));
    for (let j = 0; j < ms.length; j++) {
      histogramMs[start + j] = Math.min(65535, Number(ms[j]));
      histogramTokens[start + j] = Number(tokens[j]);
    }
  }
  return { histogramStart, histogramMs, histogramTokens };
}

function listOf(value: unknown): ArrayLike<unknown> {
  if (value === null || value === undefined) return [];
  if (Array.isArray(value) || ArrayBuffer.isView(value)) return value as unknown as ArrayLike<unknown>;
  return (value as { readonly items: ArrayLike<unknown> }).items;
}
