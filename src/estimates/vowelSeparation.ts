import { summarise } from "../statistics/summary.ts";
import { pooledSd, type SpeakerVowels, type VowelName, valuesOf } from "./vowelSpaceSpeakers.ts";

/** How often F1 and F2 tell two vowels of a speaker apart. */
export interface PairSeparation {
  readonly pair: readonly [VowelName, VowelName];
  /** Vowels of both kinds, by speaker; each is > 0. */
  readonly tokens: readonly number[];
  /** Those of them that lie nearer to the centre of their own kind. */
  readonly right: readonly number[];
}

/** Vowels of each kind that a speaker must have said to be looked at. */
export const leastToSeparate = 5;

/**
 * For every two of `vowels`, how many tokens lie nearer to the centre of their own kind than to the other's. Distances are in
 * F1 and F2, each by the speaker's own spread within vowels; a token does not count towards its own centre. Chance is one half. Only speakers with enough
 * vowels of every kind count, so that all pairs speak of the same people.
 */
export function vowelSeparation(
  speakers: readonly SpeakerVowels[],
  vowels: readonly VowelName[],
): PairSeparation[] {
  const whole = speakers.flatMap((speaker) => {
    const values = vowels.map((vowel) => valuesOf(speaker, vowel, "all"));
    if (values.some(({ f1Hz }) => f1Hz.length < leastToSeparate)) return [];
    const [f1, f2] = [pooledSd(values.map(({ f1Hz }) => f1Hz)), pooledSd(values.map(({ f2Hz }) => f2Hz))];
    return f1 === null || f2 === null || f1 === 0 || f2 === 0
      ? []
      : [
          values.map(({ f1Hz, f2Hz }) =>
            cloudOf(
              f1Hz.map((x) => x / f1),
              f2Hz.map((x) => x / f2),
            ),
          ),
        ];
  });
  return vowels.flatMap((first, i) =>
    vowels.slice(i + 1).map((second, j): PairSeparation => {
      const sides = whole.map((clouds) => [clouds[i]!, clouds[i + 1 + j]!] as const);
      return {
        pair: [first, second],
        tokens: sides.map(([a, b]) => a.x.length + b.x.length),
        right: sides.map(([a, b]) => nearerOwn(a, b) + nearerOwn(b, a)),
      };
    }),
  );
}

interface Cloud {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly centre: readonly [number, number];
}

function cloudOf(x: readonly number[], y: readonly number[]): Cloud {
  return { x, y, centre: [summarise(x).mean, summarise(y).mean] };
}

function nearerOwn(own: Cloud, other: Cloud): number {
  const n = own.x.length;
  /** Squared distance to the centre of the others of its kind is n/(n − 1) squared times that to the centre of all. */
  const leftOut = (n / (n - 1)) ** 2;
  let right = 0;
  for (let i = 0; i < n; i++) {
    const to = ([x, y]: Cloud["centre"]) => (own.x[i]! - x) ** 2 + (own.y[i]! - y) ** 2;
    if (leftOut * to(own.centre) < to(other.centre)) right++;
  }
  return right;
}
