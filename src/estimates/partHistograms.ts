import type { Cells } from "./cells.ts";
import type { Partition } from "./partition.ts";

/** Histograms of durations by part: entry `ms` of `of(part)` counts the tokens of that many whole ms. */
export interface PartHistograms {
  of(part: number): Float64Array;
}

/** Adds up the cells' histograms; `skip[i]` of the shortest tokens of cell i are left out. */
export function partHistograms(cells: Cells, parts: Partition, skip: Float64Array | null): PartHistograms {
  const { selection, partOf, count } = parts;
  const { histogramStart, histogramMs, histogramTokens } = cells;
  const start = new Uint32Array(count + 1);
  for (let i = 0; i < partOf.length; i++) {
    const end = histogramStart[selection[i]! + 1]!;
    const size = end > histogramStart[selection[i]!]! ? histogramMs[end - 1]! + 1 : 0;
    if (size > start[partOf[i]! + 1]!) start[partOf[i]! + 1] = size;
  }
  for (let part = 0; part < count; part++) start[part + 1]! += start[part]!;
  const counts = new Float64Array(start[count]!);
  for (let i = 0; i < partOf.length; i++) {
    const cell = selection[i]!;
    const base = start[partOf[i]!]!;
    const end = histogramStart[cell + 1]!;
    let left = skip === null ? 0 : skip[cell]!;
    for (let j = histogramStart[cell]!; j < end; j++) {
      const skipped = Math.min(left, histogramTokens[j]!);
      left -= skipped;
      counts[base + histogramMs[j]!]! += histogramTokens[j]! - skipped;
    }
  }
  return { of: (part) => counts.subarray(start[part]!, start[part + 1]!) };
}
