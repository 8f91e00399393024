import { thinLevel, thinOutcome } from "../../messages/models.ts";
import type { Design } from "./designMatrix.ts";

/** Tokens of a level below which it is thin: with fewer, a rate is uncertain by more than 20 points. */
export const leastTokens = 20;

/** Tokens of the rarer outcome below which a level is thin: with fewer a logarithm of odds is far from normal. */
export const leastOutcomes = 5;

/** A level that rests on few tokens, few speakers or few tokens of one outcome. */
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
  /** Default `leastTokens`. */
  readonly tokens?: number;
  /** Default 3: fewer tell about those people only. */
  readonly clusters?: number;
  /** Successes of each row of the columns, where the outcome is yes or no. Default: not judged. */
  readonly successes?: ArrayLike<number>;
  /** Default `leastOutcomes`. */
  readonly outcomes?: number;
}

/** Levels of the design's categorical columns with too few tokens or clusters, in design order. `counts`: tokens of each row of the columns. */
export function thinLevels(
  design: Design,
  counts: ArrayLike<number>,
  options: ThinOptions = {},
): ThinLevel[] {
  const { cluster, successes, unit = "speaker" } = options;
  const least = {
    tokens: options.tokens ?? leastTokens,
    clusters: options.clusters ?? 3,
    outcomes: options.outcomes ?? leastOutcomes,
  };
  return design.factors.flatMap((factor) => {
    const tokens = new Float64Array(factor.levels.length);
    const marked = new Float64Array(factor.levels.length);
    const clusters = factor.levels.map(() => new Set<number>());
    for (let i = 0; i < factor.codes.length; i++) {
      const row = design.rows[i]!;
      tokens[factor.codes[i]!]! += counts[row]!;
      if (successes) marked[factor.codes[i]!]! += successes[row]!;
      if (cluster) clusters[factor.codes[i]!]!.add(cluster[row]!);
    }
    return factor.levels.flatMap((level, k) => {
      const met = cluster ? clusters[k]!.size : null;
      const known = { column: factor.column, level, tokens: tokens[k]!, clusters: met };
      if (tokens[k]! < least.tokens || (met !== null && met < least.clusters))
        return [{ ...known, text: thinLevel(factor.column, level, tokens[k]!, met, unit) }];
      const rarer = Math.min(marked[k]!, tokens[k]! - marked[k]!);
      if (successes === undefined || rarer >= least.outcomes) return [];
      return [{ ...known, text: thinOutcome(factor.column, level, marked[k]!, tokens[k]!) }];
    });
  });
}
