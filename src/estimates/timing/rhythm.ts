import { summarise } from "../../statistics/summary.ts";
import { normalisedPvi, rawPvi } from "./pairwiseVariability.ts";

/** A phone of a stretch without pauses. */
export interface TimedPhone {
  readonly kind: "vowel" | "consonant";
  readonly durationMs: number;
}

/** Rhythm of one stretch, in the usual measures; null where there is too little for one. */
export interface Rhythm {
  /** Share of the time taken by vowels, 0 to 100 (%V). */
  readonly vowelPercent: number;
  /** Standard deviation (n) of vocalic and consonantal stretches, ms (ΔV, ΔC). */
  readonly deltaVowelMs: number | null;
  readonly deltaConsonantMs: number | null;
  /** Normalised index of vocalic, raw index of consonantal stretches (ms). */
  readonly vowelNpvi: number | null;
  readonly consonantRpviMs: number | null;
}

/**
 * Rhythm of a stretch between pauses. Neighbouring vowels count as one vocalic stretch, neighbouring consonants as one
 * consonantal stretch. Null without duration. These measures depend on the text: compare the same sentences, and order
 * rather than values. Source: Ramus F., Nespor M. & Mehler J. (1999) Cognition 73:265–292 (%V, ΔV, ΔC); Grabe & Low
 * (2002) (nPVI, rPVI); Arvaniti A. (2009) Phonetica 66:46–63 (dependence on text).
 */
export function rhythmOf(phones: readonly TimedPhone[]): Rhythm | null {
  const vowels: number[] = [];
  const consonants: number[] = [];
  let last: TimedPhone["kind"] | null = null;
  for (const { kind, durationMs } of phones) {
    const into = kind === "vowel" ? vowels : consonants;
    if (kind === last) into[into.length - 1]! += durationMs;
    else into.push(durationMs);
    last = kind;
  }
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const total = sum(vowels) + sum(consonants);
  if (!(total > 0)) return null;
  return {
    vowelPercent: (100 * sum(vowels)) / total,
    deltaVowelMs: spread(vowels),
    deltaConsonantMs: spread(consonants),
    vowelNpvi: vowels.length < 2 ? null : normalisedPvi(vowels),
    consonantRpviMs: consonants.length < 2 ? null : rawPvi(consonants),
  };
}

function spread(values: readonly number[]): number | null {
  return values.length < 2 ? null : summarise(values).sd * Math.sqrt((values.length - 1) / values.length);
}
