import type { SideDurations } from "./lengthGroups.ts";
import { medianAboveFloor } from "./standardisedRatios.ts";

/** Durations of the long or the short sounds of a row, all speakers and phones together. */
export interface SideSummary {
  readonly tokens: number;
  readonly meanMs: number;
  readonly geometricMeanMs: number;
  /** Null when it would be the aligner's floor. */
  readonly medianMs: number | null;
  readonly atFloorShare: number;
  /** Tokens found to be devoiced, measured or annotated; null where nothing tells which of them are counted. */
  readonly devoiced: number | null;
}

export function summariseSide(sides: readonly SideDurations[]): SideSummary {
  const total = { tokens: 0, atFloor: 0, devoiced: 0, sumMs: 0, sumLogMs: 0 };
  const counts = new Float64Array(Math.max(...sides.map((side) => side.histogram.length)));
  for (const side of sides) {
    total.tokens += side.tokens;
    total.atFloor += side.atFloor;
    total.devoiced += side.devoiced;
    total.sumMs += side.sumMs;
    total.sumLogMs += side.sumLogMs;
    for (let ms = 0; ms < side.histogram.length; ms++) counts[ms]! += side.histogram[ms]!;
  }
  return {
    tokens: total.tokens,
    meanMs: total.sumMs / total.tokens,
    geometricMeanMs: Math.exp(total.sumLogMs / total.tokens),
    medianMs: medianAboveFloor(counts, total.atFloor, total.tokens),
    atFloorShare: total.atFloor / total.tokens,
    devoiced: Number.isNaN(total.devoiced) ? null : total.devoiced,
  };
}
