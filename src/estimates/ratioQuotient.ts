import { tMultiplier, tTwoSidedP } from "../statistics/distributions.ts";
import { type Interval, unionOf } from "../statistics/interval.ts";
import { type SpeakerDifferences, type Stratum, speakerDifferences } from "./pairedRatio.ts";

export interface RatioQuotient extends Interval {
  /** First ratio divided by second; 1 means that they are equal. */
  readonly quotient: number;
  readonly p: number;
  readonly speakers: number;
  readonly method: "one-speaker" | "clustered";
}

/**
 * How two long-to-short ratios differ (e.g. before a pause and elsewhere): their quotient, each speaker set against
 * itself on the log scale, with the clustered variance of `rateDifference`; never narrower than for independent
 * tokens. Null when either ratio cannot be estimated.
 */
export function ratioQuotient(
  a: readonly Stratum[],
  b: readonly Stratum[],
  level: number,
): RatioQuotient | null {
  const [da, db] = [speakerDifferences(a), speakerDifferences(b)];
  if (da === null || db === null) return null;
  const log = da.all.value - db.all.value;
  const variance = da.all.variance + db.all.variance;
  const tokenDf = variance ** 2 / (da.all.variance ** 2 / da.all.df + db.all.variance ** 2 / db.all.df);
  const independent = around(log, tMultiplier(level, tokenDf) * Math.sqrt(variance));
  const tokenP = tTwoSidedP(log / Math.sqrt(variance), tokenDf);

  const parts = new Map<number, { gap: number; share: number }>();
  addParts(parts, da, 1);
  addParts(parts, db, -1);
  let squares = 0;
  let concentration = 0;
  for (const { gap, share } of parts.values()) {
    squares += gap ** 2;
    concentration += share ** 2;
  }
  const df = 1 / concentration - 1;
  const result = { quotient: Math.exp(log), speakers: parts.size };
  if (parts.size < 2 || !(df > 0.5)) return { ...result, ...independent, p: tokenP, method: "one-speaker" };
  const error = Math.sqrt(squares);
  return {
    ...result,
    ...unionOf(around(log, tMultiplier(level, df) * error), independent),
    p: error > 0 ? Math.max(tokenP, tTwoSidedP(log / error, df)) : tokenP,
    method: "clustered",
  };
}

function addParts(
  parts: Map<number, { gap: number; share: number }>,
  { speakers, values, weights, all }: SpeakerDifferences,
  sign: number,
): void {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  for (const [k, speaker] of speakers.entries()) {
    const part = parts.get(speaker) ?? { gap: 0, share: 0 };
    parts.set(speaker, part);
    const share = weights[k]! / total;
    if (share < 1) part.gap += (sign * share * (values[k]! - all.value)) / Math.sqrt(1 - share);
    part.share += share / 2;
  }
}

function around(log: number, half: number): Interval {
  return { low: Math.exp(log - half), high: Math.exp(log + half) };
}
