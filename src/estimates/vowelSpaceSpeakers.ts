import { summarise } from "../statistics/summary.ts";
import { labelAt, type TokenTable } from "./tokenTable.ts";

export const fiveVowels = ["a", "i", "u", "e", "o"] as const;
export type VowelName = (typeof fiveVowels)[number];
export const lengths = ["short", "long", "unknown"] as const;
export type VowelLength = (typeof lengths)[number];

type VowelKey = `${VowelName} ${VowelLength}`;

/** F1 and F2 of the vowels of one kind and length that one speaker said, Hz. */
export interface SpokenVowels {
  readonly f1Hz: readonly number[];
  readonly f2Hz: readonly number[];
}

/** Lobanov's scale of one speaker for one formant: z = (value − mean) / sd. */
export interface Scale {
  readonly mean: number;
  readonly sd: number;
}

export interface SpeakerVowels {
  readonly speaker: string;
  /** Median over the speaker's vowels; null where none has an F0. */
  readonly f0MedianHz: number | null;
  readonly vowels: ReadonlyMap<VowelKey, SpokenVowels>;
  /** Null for a speaker without `leastOfEach` vowels of each of the five kinds. */
  readonly scales: { readonly f1: Scale; readonly f2: Scale } | null;
}

/** Vowels of each kind that a speaker must have said to be normalised. */
export const leastOfEach = 3;

interface Collected {
  readonly f0: number[];
  readonly vowels: Map<VowelKey, { readonly f1Hz: number[]; readonly f2Hz: number[] }>;
}

/**
 * Each speaker's measured vowels (both formants known). Lobanov B. M. (1971) JASA 49:606–608 normalises by a speaker's
 * mean and standard deviation over all vowels; here each of the five kinds weighs the same, so that texts with many /a/
 * do not shift the centre.
 */
export function vowelsBySpeaker({ labels, numbers }: TokenTable, rows: Uint32Array): SpeakerVowels[] {
  const found = new Map<string, Collected>();
  for (const row of rows) {
    const phone = labelAt(labels.phone, row);
    if (!(fiveVowels as readonly (string | null)[]).includes(phone)) continue;
    const speaker = labelAt(labels.speaker, row) ?? "unknown";
    const own: Collected = found.get(speaker) ?? { f0: [], vowels: new Map() };
    found.set(speaker, own);
    if (!Number.isNaN(numbers.f0Hz[row]!)) own.f0.push(numbers.f0Hz[row]!);
    const [f1, f2] = [numbers.f1Hz[row]!, numbers.f2Hz[row]!];
    if (Number.isNaN(f1) || Number.isNaN(f2)) continue;
    const key = `${phone} ${labelAt(labels.length, row) ?? "unknown"}` as VowelKey;
    const values = own.vowels.get(key) ?? { f1Hz: [], f2Hz: [] };
    own.vowels.set(key, values);
    values.f1Hz.push(f1);
    values.f2Hz.push(f2);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([speaker, { f0, vowels }]) => ({
      speaker,
      f0MedianHz: medianOf(f0),
      vowels,
      scales: scalesOf(vowels),
    }));
}

/** All lengths of a vowel together, or one of them. */
export function valuesOf(
  { vowels }: Pick<SpeakerVowels, "vowels">,
  vowel: VowelName,
  length: VowelLength | "all",
): SpokenVowels {
  const wanted = length === "all" ? lengths : [length];
  const parts = wanted.flatMap((one) => vowels.get(`${vowel} ${one}`) ?? []);
  return { f1Hz: parts.flatMap(({ f1Hz }) => f1Hz), f2Hz: parts.flatMap(({ f2Hz }) => f2Hz) };
}

function scalesOf(vowels: ReadonlyMap<VowelKey, SpokenVowels>): SpeakerVowels["scales"] {
  const kinds = fiveVowels.map((vowel) => valuesOf({ vowels }, vowel, "all"));
  if (kinds.some(({ f1Hz }) => f1Hz.length < leastOfEach)) return null;
  const f1 = evenScale(kinds.map(({ f1Hz }) => f1Hz));
  const f2 = evenScale(kinds.map(({ f2Hz }) => f2Hz));
  return f1.sd > 0 && f2.sd > 0 ? { f1, f2 } : null;
}

/** Mean and standard deviation of values in which each kind weighs the same. */
function evenScale(kinds: readonly (readonly number[])[]): Scale {
  const average = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length;
  const mean = average(kinds.map(average));
  const variance = average(kinds.map((values) => average(values.map((x) => (x - mean) ** 2))));
  return { mean, sd: Math.sqrt(variance) };
}

function medianOf(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = Float64Array.from(values).sort();
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Standard deviation within speakers, pooled; null where no speaker has two values. */
export function pooledSd(perSpeaker: readonly (readonly number[])[]): number | null {
  let squares = 0;
  let df = 0;
  for (const values of perSpeaker) {
    if (values.length < 2) continue;
    squares += summarise(values).sd ** 2 * (values.length - 1);
    df += values.length - 1;
  }
  return df === 0 ? null : Math.sqrt(squares / df);
}
