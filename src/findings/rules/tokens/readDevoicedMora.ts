import { type Basis, isEvidence } from "../../../basis.ts";
import type { Source } from "../../../estimates/explain/sources.ts";
import { timedTokens } from "../../../estimates/explain/timedTokens.ts";
import { noticeableFloor } from "../../../estimates/ratioCore.ts";
import { ratioOfTwins, twinMorae } from "../../../estimates/timing/devoicedMora.ts";
import { labelAt, type TokenTable } from "../../../estimates/tokenTable.ts";
import {
  marksByRule,
  noMarkedMorae,
  noTwins,
  sameMoraMethod,
  vowelsAtFloor,
} from "../../../messages/rules.ts";
import { speakerDoubts } from "../readRates.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** Duration of a mora with a devoiced vowel by that of the same mora voiced. */
export function readDevoicedMora(table: TokenTable, { rows }: Source, level: number): TokenAnswer {
  const { labels } = table;
  const marked = rows.filter((row) => labelAt(labels.devoiced, row) !== null);
  if (marked.length === 0) return { unreadable: noMarkedMorae() };
  if (!marked.some((row) => isEvidence(labelAt(labels.devoicedBasis, row) as Basis | null)))
    return { unreadable: marksByRule() };
  const twins = twinMorae(timedTokens(table, rows));
  const found = ratioOfTwins(twins, level);
  const devoiced = marked.filter((row) => labelAt(labels.devoiced, row) === "true");
  const atFloor = devoiced.filter((row) => labelAt(labels.atFloor, row) === "true").length / devoiced.length;
  const speakers = new Set(twins.map(({ speaker }) => speaker)).size;
  const count = (side: "devoiced" | "voiced") => twins.reduce((sum, twin) => sum + twin[side].tokens, 0);
  return {
    basis: labelAt(labels.timeBasis, rows[0]!) as Basis,
    estimate: found?.estimate ?? null,
    interval: found && { low: found.low, high: found.high },
    ...{ tokens: [count("devoiced"), count("voiced")], speakers, sides: [], detail: null },
    reason: found === null ? noTwins() : null,
    method: sameMoraMethod(speakers),
    warnings: [...speakerDoubts(speakers), ...(atFloor >= noticeableFloor ? [vowelsAtFloor(atFloor)] : [])],
  };
}
