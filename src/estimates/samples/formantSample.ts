import { labelAt, type TokenTable } from "../tokenTable.ts";
import { groupByPitch } from "../vowelSpace.ts";
import {
  fiveVowels,
  type SpeakerVowels,
  type VowelLength,
  type VowelName,
  valuesOf,
  vowelsBySpeaker,
} from "../vowelSpaceSpeakers.ts";
import { drawSome } from "./drawSome.ts";

/** How a speaker's vowels lie about the speaker's own mean: pooled covariance within speakers. */
export interface Spread {
  /** Variances of F1 and F2 and their covariance, Hz² or z². */
  readonly f1: number;
  readonly f2: number;
  readonly both: number;
}

export interface VowelSpread {
  readonly group: string;
  readonly vowel: VowelName;
  readonly length: VowelLength | "all";
  /** Null where no speaker has two vowels. */
  readonly hz: Spread | null;
  readonly z: Spread | null;
}

/** Vowels of one dataset and label set for a chart. */
export interface FormantSample {
  readonly spreads: readonly VowelSpread[];
  /** Some single vowels, drawn at random; `z` is null where a speaker could not be normalised. */
  readonly points: readonly FormantPoint[];
}

export interface FormantPoint {
  readonly group: string;
  readonly vowel: VowelName;
  readonly length: VowelLength;
  readonly hz: readonly [f1: number, f2: number];
  readonly z: readonly [f1: number, f2: number] | null;
}

/** Points of one vowel and length in one group: with five vowels, short and long, about 3,000 a dataset of two groups. */
const mostPoints = 150;

/** Spread and sample of the measured vowels; `rows` of one dataset and label set. Empty without formants. */
export function formantSample(table: TokenTable, rows: Uint32Array, seed: number): FormantSample {
  const vowels = rows.filter((row) => labelAt(table.labels.kind, row) === "vowel");
  const groups = new Map<string, SpeakerVowels[]>();
  for (const speaker of vowelsBySpeaker(table, vowels)) {
    if (speaker.vowels.size === 0) continue;
    const group = groupByPitch(speaker.f0MedianHz);
    groups.set(group, [...(groups.get(group) ?? []), speaker]);
  }
  const cells = [...groups].flatMap(([group, speakers]) =>
    fiveVowels.flatMap((vowel) =>
      (["all", "short", "long", "unknown"] as const).map((length) => ({ group, speakers, vowel, length })),
    ),
  );
  return {
    spreads: cells.flatMap(({ group, speakers, vowel, length }) => {
      const hz = pooled(speakers.map((speaker) => pointsOf(speaker, vowel, length, "hz")));
      const z = pooled(speakers.map((speaker) => pointsOf(speaker, vowel, length, "z")));
      return hz === null ? [] : [{ group, vowel, length, hz, z }];
    }),
    points: cells.flatMap(({ group, speakers, vowel, length }, i) => {
      if (length === "all") return [];
      const all = speakers.flatMap((speaker) => {
        const z = pointsOf(speaker, vowel, length, "z");
        return pointsOf(speaker, vowel, length, "hz").map(([f1, f2], k) => ({
          ...{ group, vowel, length },
          hz: [Math.round(f1), Math.round(f2)] as const,
          z: z[k] === undefined ? null : ([rounded(z[k][0]), rounded(z[k][1])] as const),
        }));
      });
      return drawSome(all, mostPoints, seed + i);
    }),
  };
}

/** Vowels of a speaker as pairs; none in z where the speaker cannot be normalised. */
function pointsOf(
  speaker: SpeakerVowels,
  vowel: VowelName,
  length: VowelLength | "all",
  scale: "hz" | "z",
): (readonly [number, number])[] {
  const { f1Hz, f2Hz } = valuesOf(speaker, vowel, length);
  if (scale === "hz") return f1Hz.map((f1, k) => [f1, f2Hz[k]!] as const);
  const { scales } = speaker;
  if (scales === null) return [];
  return f1Hz.map(
    (f1, k) => [(f1 - scales.f1.mean) / scales.f1.sd, (f2Hz[k]! - scales.f2.mean) / scales.f2.sd] as const,
  );
}

function pooled(perSpeaker: readonly (readonly (readonly [number, number])[])[]): Spread | null {
  const sums = { f1: 0, f2: 0, both: 0 };
  let df = 0;
  for (const points of perSpeaker) {
    if (points.length < 2) continue;
    const mean = (k: 0 | 1) => points.reduce((sum, point) => sum + point[k], 0) / points.length;
    const [m1, m2] = [mean(0), mean(1)];
    for (const [f1, f2] of points) {
      sums.f1 += (f1 - m1) ** 2;
      sums.f2 += (f2 - m2) ** 2;
      sums.both += (f1 - m1) * (f2 - m2);
    }
    df += points.length - 1;
  }
  return df === 0 ? null : { f1: sums.f1 / df, f2: sums.f2 / df, both: sums.both / df };
}

function rounded(value: number): number {
  return Math.round(1000 * value) / 1000;
}
