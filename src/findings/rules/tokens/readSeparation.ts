import { clusteredRate } from "../../../estimates/clusteredRate.ts";
import type { Source } from "../../../estimates/explain/sources.ts";
import { smallestOf } from "../../../estimates/extremeOf.ts";
import type { TokenTable } from "../../../estimates/tokenTable.ts";
import { leastToSeparate, vowelSeparation } from "../../../estimates/vowelSeparation.ts";
import { vowelsBySpeaker } from "../../../estimates/vowelSpaceSpeakers.ts";
import { leastOfMany, noFormantsMeasured, noSpeakerWithAllVowels } from "../../../messages/rules.ts";
import { speakerDoubts } from "../readRates.ts";
import type { TokenContrast } from "../tokenContrasts.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** Of the two vowels that F1 and F2 tell apart worst, the share that lies nearer to the centre of its own kind. */
export function readSeparation(
  table: TokenTable,
  { rows }: Source,
  { vowels }: Extract<TokenContrast, { kind: "vowel-separation" }>,
  level: number,
): TokenAnswer {
  const said = vowelsBySpeaker(table, rows);
  if (said.every(({ vowels: own }) => own.size === 0)) return { unreadable: noFormantsMeasured() };
  const pairs = vowelSeparation(said, vowels);
  const speakers = pairs[0]!.tokens.length;
  if (speakers === 0)
    return {
      ...{ basis: "measured", estimate: null, interval: null, detail: null, method: "", sides: [] },
      ...{ tokens: [0], speakers: said.length, warnings: [] },
      reason: noSpeakerWithAllVowels(leastToSeparate),
    };
  const found = smallestOf(
    pairs.map(({ tokens, right }) => ({
      estimate: sum(right) / sum(tokens),
      at: (asked) => clusteredRate(tokens, right, asked),
    })),
    level,
  )!;
  const { pair } = pairs[found.place]!;
  return {
    ...{ basis: "measured", estimate: found.estimate, interval: { low: found.low, high: found.high } },
    tokens: [Math.min(...pairs.map(({ tokens }) => sum(tokens)))],
    ...{ speakers, sides: [], detail: `/${pair[0]}/ and /${pair[1]}/`, reason: null },
    method: leastOfMany(pairs.length, "pairs of vowels, shares clustered by speaker"),
    warnings: speakerDoubts(speakers),
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
