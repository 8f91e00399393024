import type { Source } from "../../../estimates/explain/sources.ts";
import { speakerMean } from "../../../estimates/timing/speakerMean.ts";
import type { TokenTable } from "../../../estimates/tokenTable.ts";
import { pitchLimitHz } from "../../../estimates/vowelSpace.ts";
import { valuesOf, vowelsBySpeaker } from "../../../estimates/vowelSpaceSpeakers.ts";
import { groupedByPitch } from "../../../messages/explain.ts";
import { formantByLimit, noFormantsMeasured, noVoicesKnown } from "../../../messages/rules.ts";
import { tMultiplier } from "../../../statistics/distributions.ts";
import { summarise } from "../../../statistics/summary.ts";
import { speakerDoubts } from "../readRates.ts";
import type { TokenContrast } from "../tokenContrasts.ts";
import type { TokenAnswer } from "./tokenAnswer.ts";

/** How far the mean formant of a vowel lies above the limit of the speaker's kind of voice, in semitones. */
export function readFormant(
  table: TokenTable,
  { rows }: Source,
  { vowel, formant, limits }: Extract<TokenContrast, { kind: "formant" }>,
  level: number,
): TokenAnswer {
  const said = vowelsBySpeaker(table, rows)
    .map((speaker) => ({ ...speaker, hz: valuesOf(speaker, vowel, "all")[formant] }))
    .filter(({ hz }) => hz.length > 0);
  if (said.length === 0) return { unreadable: noFormantsMeasured() };
  const known = said.flatMap(({ f0MedianHz, hz }) =>
    f0MedianHz === null
      ? []
      : [{ hz, limit: f0MedianHz < pitchLimitHz ? limits.lowerVoices : limits.higherVoices }],
  );
  if (known.length === 0) return { unreadable: noVoicesKnown() };
  const above = known.map(({ hz, limit }) => 12 * Math.log2(summarise(hz).mean / limit));
  const { estimate, low, high } = speakerMean(above, level)!;
  const bounds = known.length > 1 ? { low: low!, high: high! } : overVowels(known[0]!.hz, estimate, level);
  return {
    basis: "measured",
    ...{ estimate, interval: bounds },
    tokens: [known.reduce((sum, { hz }) => sum + hz.length, 0)],
    ...{ speakers: known.length, sides: [], detail: null, reason: null },
    method: formantByLimit(known.length),
    warnings: [...speakerDoubts(known.length), groupedByPitch(pitchLimitHz)],
  };
}

function overVowels(hz: readonly number[], estimate: number, level: number) {
  const { n, mean, sd } = summarise(hz);
  if (n < 2) return null;
  const half = (12 * Math.LOG2E * tMultiplier(level, n - 1) * sd) / mean / Math.sqrt(n);
  return { low: estimate - half, high: estimate + half };
}
