import { fewSpeakers } from "../messages/estimates.ts";
import {
  formantsMissing,
  formantsOneSpeaker,
  groupedByPitch,
  noFormants,
  notNormalised,
} from "../messages/explain.ts";
import { sourcesOf } from "./explain/sources.ts";
import { safeSpeakers } from "./rateSafety.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";
import { centroidsOf, type LengthShift, lengthShiftsOf, type VowelCentroid } from "./vowelSpaceGroups.ts";
import { leastOfEach, type SpeakerVowels, vowelsBySpeaker } from "./vowelSpaceSpeakers.ts";

export interface VowelGroup {
  readonly group: string;
  readonly speakers: number;
  readonly vowels: readonly VowelCentroid[];
  readonly longAgainstShort: readonly LengthShift[];
  readonly warnings: readonly string[];
}

/** F1 and F2 of the vowels of one dataset and label set. */
export interface VowelSpace {
  readonly dataset: string;
  readonly labelSet: string;
  readonly basis: "measured";
  readonly level: number;
  /** Why there are no groups; null when there are. */
  readonly reason: string | null;
  readonly method: string;
  readonly groups: readonly VowelGroup[];
  readonly warnings: readonly string[];
}

export interface VowelSpaceOptions {
  /** Default 0.95. */
  readonly level?: number;
  /** Group of a speaker, where something better than pitch is known. Default: by median F0. */
  readonly groupOf?: (dataset: string, speaker: string) => string;
}

/** Median F0 that parts lower from higher voices, Hz; about halfway between usual ranges, no published source. */
export const pitchLimitHz = 165;

const method =
  "mean over speakers, each counting the same, with t interval; one speaker: over vowels. z: Lobanov (1971), the five vowels weighing the same";

/**
 * Vowel space: centroids, spread and long against short, in Hz and normalised, by speaker group. Values rest on vowels
 * whose two formants were measured; without recordings the reason is given.
 */
export function vowelSpace(
  table: TokenTable,
  { level = 0.95, groupOf }: VowelSpaceOptions = {},
): VowelSpace[] {
  return sourcesOf(table).map(({ dataset, labelSet, rows }): VowelSpace => {
    const { labels, numbers } = table;
    const head = { dataset, labelSet, basis: "measured" as const, level, method };
    const vowels = rows.filter((row) => labelAt(labels.kind, row) === "vowel");
    const measured = vowelsBySpeaker(table, vowels).filter((speaker) => speaker.vowels.size > 0);
    if (measured.length === 0) return { ...head, reason: noFormants(), groups: [], warnings: [] };
    const groups = new Map<string, SpeakerVowels[]>();
    for (const speaker of measured) {
      const name = groupOf ? groupOf(dataset, speaker.speaker) : groupByPitch(speaker.f0MedianHz);
      groups.set(name, [...(groups.get(name) ?? []), speaker]);
    }
    const voiced = vowels.filter((row) => labelAt(labels.devoicedHeard, row) === "false");
    const without = voiced.filter(
      (row) => Number.isNaN(numbers.f1Hz[row]!) || Number.isNaN(numbers.f2Hz[row]!),
    ).length;
    const unscaled = measured.filter(({ scales }) => scales === null).length;
    return {
      ...head,
      reason: null,
      groups: [...groups]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([group, own]) => ({
          group,
          speakers: own.length,
          vowels: centroidsOf(own, level),
          longAgainstShort: lengthShiftsOf(own, level),
          warnings: groupWarnings(own.length),
        })),
      warnings: [
        ...(groupOf ? [] : [groupedByPitch(pitchLimitHz)]),
        ...(without > 0 ? [formantsMissing(without / voiced.length)] : []),
        ...(unscaled > 0 ? [notNormalised(unscaled, leastOfEach)] : []),
      ],
    };
  });
}

/** Group of a voice by its median F0, in words. */
export function groupByPitch(f0MedianHz: number | null): string {
  if (f0MedianHz === null) return "pitch unknown";
  return f0MedianHz < pitchLimitHz ? "lower voices" : "higher voices";
}

function groupWarnings(speakers: number): string[] {
  if (speakers === 1) return [formantsOneSpeaker()];
  return speakers < safeSpeakers ? [fewSpeakers(speakers, safeSpeakers)] : [];
}
