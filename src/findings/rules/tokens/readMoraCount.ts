import type { Basis } from "../../../basis.ts";
import type { Source } from "../../../estimates/explain/sources.ts";
import { timedTokens } from "../../../estimates/explain/timedTokens.ts";
import { moraTiming } from "../../../estimates/timing/moraTiming.ts";
import { labelAt, type TokenTable } from "../../../estimates/tokenTable.ts";
import { noWordsTimed, shareByMorae } from "../../../messages/rules.ts";
import { normalMultiplier } from "../../../statistics/distributions.ts";
import type { Interval } from "../../../statistics/interval.ts";
import { speakerDoubts } from "../readRates.ts";
import type { TokenContrast } from "../tokenContrasts.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** Share of the variance of word (or phrase) durations that the number of morae explains. */
export function readMoraCount(
  table: TokenTable,
  { rows }: Source,
  { of }: Extract<TokenContrast, { kind: "mora-count" }>,
  level: number,
): TokenAnswer {
  const timing = moraTiming(timedTokens(table, rows), of, level);
  if (timing === null) return { unreadable: noWordsTimed(of) };
  const { estimate, low, high } = timing.rSquared;
  const lines = timing.perSpeaker;
  const interval =
    low === null || high === null
      ? oneLine(estimate, lines[0]!.stretches, level)
      : { low: Math.max(0, low), high: Math.min(1, high) };
  return {
    basis: labelAt(table.labels.timeBasis, rows[0]!) as Basis,
    ...{ estimate, interval, detail: of === "word" ? "words" : "phrases", reason: null, sides: [] },
    tokens: [lines.reduce((sum, { stretches }) => sum + stretches, 0)],
    speakers: lines.length,
    method: shareByMorae(lines.length),
    warnings: speakerDoubts(lines.length),
  };
}

/** Fisher R. A. (1921) Metron 1:3–32: atanh of a correlation has the variance 1/(n − 3). */
function oneLine(rSquared: number, n: number, level: number): Interval | null {
  if (n < 4 || rSquared >= 1) return null;
  const half = normalMultiplier(level) / Math.sqrt(n - 3);
  const z = Math.atanh(Math.sqrt(rSquared));
  return { low: Math.tanh(Math.max(0, z - half)) ** 2, high: Math.tanh(z + half) ** 2 };
}
