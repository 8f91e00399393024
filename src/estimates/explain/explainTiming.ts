import type { Basis } from "../../basis.ts";
import {
  alignedTimes,
  noRhythm,
  noTimedPhrases,
  noTimedWords,
  noTwinMorae,
  rhythmDependsOnText,
} from "../../messages/explain.ts";
import { type DevoicedMora, devoicedMora } from "../timing/devoicedMora.ts";
import { type MoraTiming, moraTiming } from "../timing/moraTiming.ts";
import type { Rhythm } from "../timing/rhythm.ts";
import { rhythmBySpeaker, type SpeakerRhythm } from "../timing/rhythmBySpeaker.ts";
import { labelAt, type TokenTable } from "../tokenTable.ts";
import { sourcesOf } from "./sources.ts";
import { speakerWarnings } from "./speakerWarnings.ts";
import { timedTokens } from "./timedTokens.ts";

/** A result, or why there is none. */
export type Found<T> =
  | { readonly found: T; readonly reason: null }
  | { readonly found: null; readonly reason: string };

/** Rhythm over speakers and of each speaker, ready to be written as JSON. */
export type RhythmOfSpeakers = Omit<SpeakerRhythm, "perSpeaker"> & {
  readonly perSpeaker: readonly (Rhythm & { readonly speaker: string })[];
};

/** Timing in one dataset and label set. */
export interface Timing {
  readonly dataset: string;
  readonly labelSet: string;
  /** How the times came about. */
  readonly basis: Basis | null;
  readonly level: number;
  readonly tokens: number;
  readonly speakers: number;
  readonly words: Found<MoraTiming>;
  readonly phrases: Found<MoraTiming>;
  readonly devoicedMora: Found<DevoicedMora>;
  readonly rhythm: Found<RhythmOfSpeakers>;
  readonly warnings: readonly string[];
}

/** Word and stretch duration on morae, devoiced morae against their voiced twins, and rhythm measures. */
export function explainTiming(
  table: TokenTable,
  { level = 0.95 }: { readonly level?: number } = {},
): Timing[] {
  return sourcesOf(table).map(({ dataset, labelSet, rows }): Timing => {
    const tokens = timedTokens(table, rows);
    const speakers = new Set(Array.from(rows, (row) => table.labels.speaker.codes[row]!)).size;
    const rhythm = rhythmBySpeaker(tokens, level);
    const basis = labelAt(table.labels.timeBasis, rows[0]!) as Basis | null;
    return {
      ...{ dataset, labelSet, basis, level, tokens: tokens.length, speakers },
      words: foundOr(moraTiming(tokens, "word", level), noTimedWords),
      phrases: foundOr(moraTiming(tokens, "phrase", level), noTimedPhrases),
      devoicedMora: foundOr(devoicedMora(tokens, level), noTwinMorae),
      rhythm: foundOr(rhythm && listed(rhythm), noRhythm),
      warnings: [
        ...speakerWarnings(speakers),
        ...(basis === "aligned" ? [alignedTimes()] : []),
        rhythmDependsOnText(),
      ],
    };
  });
}

function foundOr<T extends object>(found: T | null, reason: () => string): Found<T> {
  return found === null ? { found: null, reason: reason() } : { found, reason: null };
}

function listed({ perSpeaker, ...means }: SpeakerRhythm): RhythmOfSpeakers {
  return { ...means, perSpeaker: [...perSpeaker].map(([speaker, rhythm]) => ({ speaker, ...rhythm })) };
}
