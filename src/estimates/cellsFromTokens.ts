import { cellDimensions, type TokenRow } from "../measures/columns.ts";
import type { Cells } from "./cells.ts";
import { cellsFromColumns } from "./cellsFromColumns.ts";

/** What a cell is made of; a token row has more. */
export type CellToken = Pick<
  TokenRow,
  (typeof cellDimensions)[number] | "timeBasis" | "durationMs" | "atFloor" | "devoiced" | "devoicedBasis"
>;

const labelColumns = [...cellDimensions, "timeBasis", "devoicedBasis"] as const;
const numberColumns = [
  ...(["tokens", "atFloor", "marked", "devoiced"] as const),
  ...(["sumMs", "sumSquareMs", "sumLogMs", "sumSquareLogMs"] as const),
] as const;

interface Cell {
  readonly first: CellToken;
  readonly sums: Record<(typeof numberColumns)[number], number>;
  readonly histogram: Map<number, number>;
}

/**
 * Tokens reduced to cells in memory. For a corpus on disk the storage toolbox does the same out of core;
 * this one serves simulations and pages that hold a few thousand tokens.
 */
export function cellsFromTokens(tokens: Iterable<CellToken>): Cells {
  const cells = new Map<string, Cell>();
  for (const token of tokens) {
    const key = labelColumns.map((name) => String(token[name])).join("\u0000");
    let cell = cells.get(key);
    if (cell === undefined) {
      cell = { first: token, sums: noSums(), histogram: new Map() };
      cells.set(key, cell);
    }
    add(cell, token);
  }
  const rows = [...cells.values()];
  const histograms = rows.map((row) => [...row.histogram].sort((a, b) => a[0] - b[0]));
  return cellsFromColumns({
    ...Object.fromEntries(labelColumns.map((name) => [name, rows.map((row) => row.first[name])])),
    ...Object.fromEntries(numberColumns.map((name) => [name, rows.map((row) => row.sums[name])])),
    histogramMs: histograms.map((pairs) => pairs.map((pair) => pair[0])),
    histogramTokens: histograms.map((pairs) => pairs.map((pair) => pair[1])),
  });
}

function noSums(): Cell["sums"] {
  return {
    ...{ tokens: 0, atFloor: 0, marked: 0, devoiced: 0 },
    ...{ sumMs: 0, sumSquareMs: 0, sumLogMs: 0, sumSquareLogMs: 0 },
  };
}

function add({ sums, histogram }: Cell, token: CellToken): void {
  const ms = token.durationMs;
  const logMs = Math.log(ms);
  const bin = Math.round(ms);
  sums.tokens++;
  sums.atFloor += token.atFloor ? 1 : 0;
  sums.marked += token.devoiced === null ? 0 : 1;
  sums.devoiced += token.devoiced ? 1 : 0;
  sums.sumMs += ms;
  sums.sumSquareMs += ms * ms;
  sums.sumLogMs += logMs;
  sums.sumSquareLogMs += logMs * logMs;
  histogram.set(bin, (histogram.get(bin) ?? 0) + 1);
}
