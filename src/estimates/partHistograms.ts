import type { Cells } from "./cells.ts";
import type { Partition } from "./partition.ts";

/** Histograms of durations by part: entry `ms` of `of(part)` counts the tokens of that many whole ms. */
export interface PartHistograms {
  of(part: number): Float64Array;
}

/** Adds up the cells' histograms; `skip[i]` of the shortest tokens of cell i are left out. */
export function partHistograms(
  cells: Cells,
  { partOf, count }: Partition,
  skip: Float64Array | null,
): PartHistograms {
  const start = new Uint32Array(count + 1);
  for (let i = 0; i < partOf.length; i++) {
    const part = partOf[i]!;
    const end = cells.histogramStart[i + 1]!;
    if (part >= 0 && end > cells.histogramStart[i]!)
      start[part + 1] = Math.max(start[part + 1]!, cells.histogramMs[end - 1]! + 1);
  }
  for (let part = 0; part < count; part++) start[part + 1]! += start[part]!;
  const counts = new Float64Array(start[count]!);
  for (let i = 0; i < partOf.length; i++) {
    const part = partOf[i]!;
    if (part < 0) continue;
    let left = skip === null ? 0 : skip[i]!;
    for (let j = cells.histogramStart[i]!; j < cells.histogramStart[i + 1]!; j++) {
      const skipped = Math.min(left, cells.histogramTokens[j]!);
      left -= skipped;
      counts[start[part]! + cells.histogramMs[j]!]! += cells.histogramTokens[j]! - skipped;
    }
  }
  return { of: (part) => counts.subarray(start[part]!, start[part + 1]!) };
}
