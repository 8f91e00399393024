import { thinLevel } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";

/** A level that rests on few tokens or few speakers. */
export interface ThinLevel {
  readonly column: string;
  readonly level: string;
  readonly tokens: number;
  /** Null when no clusters were given. */
  readonly clusters: number | null;
  readonly text: string;
}

export interface ThinOptions {
  /** Code of the speaker (or word) of each row of the columns. Default: tokens only are judged. */
  readonly cluster?: ArrayLike<number>;
  /** What a cluster is called. Default "speaker". */
  readonly unit?: string;
  /** Default 20: with fewer, a rate is uncertain by more than 20 points. */
  readonly leastTokens?: number;
  /** Default 3: fewer tell about those people only. */
  readonly leastClusters?: number;
}

/** Levels of the design's categorical columns with too few tokens or clusters, in design order. `counts`: tokens of each row of the columns. */
export function thinLevels(
  design: Design,
  counts: ArrayLike<number>,
  options: ThinOptions = {},
): ThinLevel[] {
  const { cluster, unit = "speaker", leastTokens = 20, leastClusters = 3 } = options;
  return design.factors.flatMap((factor) => {
    const tokens = new Float64Array(factor.levels.length);
    const clusters = factor.levels.map(() => new Set<number>());
    for (let i = 0; i < factor.codes.length; i++) {
      tokens[factor.codes[i]!]! += counts[design.rows[i]!]!;
      if (cluster) clusters[factor.codes[i]!]!.add(cluster[design.rows[i]!]!);
    }
    return factor.levels.flatMap((level, k) => {
      const met = cluster ? clusters[k]!.size : null;
      if (tokens[k]! >= leastTokens && (met === null || met >= leastClusters)) return [];
      const text = thinLevel(factor.column, level, tokens[k]!, met, unit);
      return [{ column: factor.column, level, tokens: tokens[k]!, clusters: met, text }];
    });
  });
}
