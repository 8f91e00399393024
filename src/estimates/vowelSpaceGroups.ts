import { tMultiplier } from "../statistics/distributions.ts";
import { summarise } from "../statistics/summary.ts";
import type { Bounded } from "./explain/explanation.ts";
import { speakerMean } from "./timing/speakerMean.ts";
import {
  fiveVowels,
  pooledSd,
  type SpeakerVowels,
  type VowelLength,
  type VowelName,
  valuesOf,
} from "./vowelSpaceSpeakers.ts";

/** Mean over speakers, each counting the same (one speaker: over vowels), with its interval and two spreads. */
export interface FormantMean {
  readonly estimate: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Standard deviation of a speaker's vowels about the speaker's own mean, pooled; null with one vowel a speaker. */
  readonly withinSpeakers: number | null;
  /** Standard deviation of the speakers' means; null for one speaker. */
  readonly betweenSpeakers: number | null;
}

export interface VowelCentroid {
  readonly vowel: VowelName;
  readonly length: VowelLength | "all";
  readonly tokens: number;
  readonly speakers: number;
  readonly f1Hz: FormantMean;
  readonly f2Hz: FormantMean;
  /** Lobanov's z; null where no speaker could be normalised. */
  readonly f1Z: FormantMean | null;
  readonly f2Z: FormantMean | null;
}

/** How far long vowels lie from short ones of the same kind, each speaker compared with itself. */
export interface LengthShift {
  readonly vowel: VowelName;
  readonly speakers: number;
  readonly longTokens: number;
  readonly shortTokens: number;
  readonly f1Hz: Bounded;
  readonly f2Hz: Bounded;
  readonly f1Semitones: Bounded;
  readonly f2Semitones: Bounded;
}

/** Centroids of every vowel that the speakers said, for all lengths together and for each. */
export function centroidsOf(speakers: readonly SpeakerVowels[], level: number): VowelCentroid[] {
  return fiveVowels.flatMap((vowel) =>
    (["all", "short", "long", "unknown"] as const).flatMap((length) => {
      const own = speakers
        .map((speaker) => ({ speaker, values: valuesOf(speaker, vowel, length) }))
        .filter(({ values }) => values.f1Hz.length > 0);
      if (own.length === 0) return [];
      const scaled = own.flatMap(({ speaker: { scales }, values }) =>
        scales === null
          ? []
          : [
              {
                f1: values.f1Hz.map((x) => (x - scales.f1.mean) / scales.f1.sd),
                f2: values.f2Hz.map((x) => (x - scales.f2.mean) / scales.f2.sd),
              },
            ],
      );
      return [
        {
          vowel,
          length,
          tokens: own.reduce((sum, { values }) => sum + values.f1Hz.length, 0),
          speakers: own.length,
          f1Hz: formantMean(
            own.map(({ values }) => values.f1Hz),
            level,
          )!,
          f2Hz: formantMean(
            own.map(({ values }) => values.f2Hz),
            level,
          )!,
          f1Z: formantMean(
            scaled.map(({ f1 }) => f1),
            level,
          ),
          f2Z: formantMean(
            scaled.map(({ f2 }) => f2),
            level,
          ),
        },
      ];
    }),
  );
}

/** Long minus short for every vowel of which a speaker has at least two of each. */
export function lengthShiftsOf(speakers: readonly SpeakerVowels[], level: number): LengthShift[] {
  return fiveVowels.flatMap((vowel) => {
    const pairs = speakers
      .map((speaker) => ({
        long: valuesOf(speaker, vowel, "long"),
        short: valuesOf(speaker, vowel, "short"),
      }))
      .filter(({ long, short }) => long.f1Hz.length >= 2 && short.f1Hz.length >= 2);
    if (pairs.length === 0) return [];
    const shift = (formant: "f1Hz" | "f2Hz", scale: (hz: number) => number): Bounded => {
      const sides = pairs.map(({ long, short }) => ({
        long: summarise(long[formant].map(scale)),
        short: summarise(short[formant].map(scale)),
      }));
      if (sides.length > 1) {
        const { estimate, low, high } = speakerMean(
          sides.map(({ long, short }) => long.mean - short.mean),
          level,
        )!;
        return { estimate, low, high };
      }
      const { long, short } = sides[0]!;
      return welch(long, short, level);
    };
    const semitones = (hz: number) => 12 * Math.log2(hz);
    const count = (side: "long" | "short") => pairs.reduce((sum, pair) => sum + pair[side].f1Hz.length, 0);
    return [
      {
        vowel,
        speakers: pairs.length,
        longTokens: count("long"),
        shortTokens: count("short"),
        f1Hz: shift("f1Hz", (hz) => hz),
        f2Hz: shift("f2Hz", (hz) => hz),
        f1Semitones: shift("f1Hz", semitones),
        f2Semitones: shift("f2Hz", semitones),
      },
    ];
  });
}

function formantMean(perSpeaker: readonly (readonly number[])[], level: number): FormantMean | null {
  const means = perSpeaker.map((values) => summarise(values).mean);
  const mean = speakerMean(means, level);
  if (mean === null) return null;
  const withinSpeakers = pooledSd(perSpeaker);
  if (means.length > 1)
    return {
      ...{ estimate: mean.estimate, low: mean.low, high: mean.high },
      withinSpeakers,
      betweenSpeakers: summarise(means).sd,
    };
  const { n, mean: estimate, sd } = summarise(perSpeaker[0]!);
  const half = n < 2 ? null : (tMultiplier(level, n - 1) * sd) / Math.sqrt(n);
  return {
    estimate,
    low: half === null ? null : estimate - half,
    high: half === null ? null : estimate + half,
    withinSpeakers,
    betweenSpeakers: null,
  };
}

/** Difference of two means of independent values (Welch B. L. (1947) Biometrika 34:28–35). */
function welch(a: ReturnType<typeof summarise>, b: ReturnType<typeof summarise>, level: number): Bounded {
  const estimate = a.mean - b.mean;
  const [va, vb] = [a.sd ** 2 / a.n, b.sd ** 2 / b.n];
  if (va + vb === 0) return { estimate, low: null, high: null };
  const df = (va + vb) ** 2 / (va ** 2 / (a.n - 1) + vb ** 2 / (b.n - 1));
  const half = tMultiplier(level, df) * Math.sqrt(va + vb);
  return { estimate, low: estimate - half, high: estimate + half };
}
