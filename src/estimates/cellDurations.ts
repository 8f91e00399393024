import type { Cells } from "./cells.ts";

/** Duration statistics of each cell, with or without the tokens at the aligner's floor. */
export interface CellDurations {
  readonly tokens: Float64Array;
  readonly atFloor: Float64Array;
  readonly sumMs: Float64Array;
  readonly sumLogMs: Float64Array;
  readonly sumSquareLogMs: Float64Array;
  /** Tokens with a devoicing mark that says so; null where nothing tells which of them are left. */
  readonly devoiced: Float64Array | null;
  /** Tokens to skip at the lower end of each cell's histogram; null for none. */
  readonly skip: Float64Array | null;
}

/** All tokens, those at the floor with the floor as their duration. */
export function keepFloor(cells: Cells): CellDurations {
  return { ...cells, skip: null };
}

/**
 * Only tokens above the floor. In a cell those at the floor are its shortest, so that they can be taken off the sums
 * by its histogram (durations to whole ms, which is exact for aligners that work on a grid of ms).
 */
export function dropFloor(cells: Cells): CellDurations {
  const tokens = cells.tokens.slice();
  const sumMs = cells.sumMs.slice();
  const sumLogMs = cells.sumLogMs.slice();
  const sumSquareLogMs = cells.sumSquareLogMs.slice();
  for (let i = 0; i < cells.size; i++) {
    let left = cells.atFloor[i]!;
    tokens[i]! -= left;
    for (let j = cells.histogramStart[i]!; left > 0 && j < cells.histogramStart[i + 1]!; j++) {
      const count = Math.min(left, cells.histogramTokens[j]!);
      const ms = cells.histogramMs[j]!;
      const logMs = Math.log(ms);
      sumMs[i]! -= count * ms;
      sumLogMs[i]! -= count * logMs;
      sumSquareLogMs[i]! -= count * logMs * logMs;
      left -= count;
    }
  }
  const none = new Float64Array(cells.size);
  return { tokens, atFloor: none, sumMs, sumLogMs, sumSquareLogMs, devoiced: null, skip: cells.atFloor };
}
