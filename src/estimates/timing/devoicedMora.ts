import { type Basis, isEvidence } from "../../basis.ts";
import { type LogSums, type PairedRatio, pairedRatio, type Stratum } from "../pairedRatio.ts";
import type { TimedToken } from "./stretches.ts";

/** Duration of a mora with a devoiced vowel against the same mora voiced. */
export interface DevoicedMora extends Omit<PairedRatio, "equalWeight"> {
  readonly devoicedTokens: number;
  readonly voicedTokens: number;
  /** Morae (consonant and vowel) that occur both ways with one speaker. */
  readonly morae: readonly string[];
}

/** A mora that one speaker says both devoiced and voiced. */
export interface TwinMora {
  readonly speaker: string;
  readonly consonant: string;
  readonly vowel: string;
  readonly devoiced: LogSums;
  readonly voiced: LogSums;
}

/**
 * Morae (consonant and short vowel) that a speaker says both ways, with the sums of their log durations. Only marks that
 * are evidence count; geminates and long vowels are left out. Tokens of one dataset and label set, in the order of the
 * recordings.
 */
export function twinMorae(tokens: readonly TimedToken[]): TwinMora[] {
  const found = new Map<string, TwinMora & { readonly devoiced: Sums; readonly voiced: Sums }>();
  for (let i = 1; i < tokens.length; i++) {
    const [consonant, vowel] = [tokens[i - 1]!, tokens[i]!];
    if (!isMora(consonant, vowel) || !isEvidence(vowel.devoicedBasis as Basis | null)) continue;
    const speaker = `${vowel.dataset}\u0000${vowel.labelSet}\u0000${vowel.speaker}`;
    const key = `${speaker}\u0000${consonant.phone}\u0000${vowel.phone}`;
    const pair = found.get(key) ?? {
      ...{ speaker: vowel.speaker, consonant: consonant.phone, vowel: vowel.phone },
      ...{ devoiced: none(), voiced: none() },
    };
    found.set(key, pair);
    add(vowel.devoiced ? pair.devoiced : pair.voiced, Math.log(consonant.durationMs + vowel.durationMs));
  }
  return [...found.values()].filter((pair) => pair.devoiced.tokens > 0 && pair.voiced.tokens > 0);
}

/**
 * Ratio of geometric mean durations of consonant + vowel, devoiced to voiced, each mora compared with itself within a
 * speaker. 1 means that the devoiced mora keeps its time. Null where no mora occurs both ways or nothing varies.
 */
export function ratioOfTwins(twins: readonly TwinMora[], level = 0.95): DevoicedMora | null {
  const number = numbering();
  const strata = twins.map(
    ({ speaker, consonant, vowel, devoiced, voiced }): Stratum => ({
      ...{ speaker: number(speaker), phone: number(consonant + vowel), long: devoiced, short: voiced },
    }),
  );
  const ratio = strata.length === 0 ? null : pairedRatio(strata, level);
  if (ratio === null) return null;
  const { equalWeight: _, ...rest } = ratio;
  const count = (side: "devoiced" | "voiced") => twins.reduce((sum, pair) => sum + pair[side].tokens, 0);
  return {
    ...rest,
    devoicedTokens: count("devoiced"),
    voicedTokens: count("voiced"),
    morae: [...new Set(twins.map(({ consonant, vowel }) => consonant + vowel))].sort(),
  };
}

/** `ratioOfTwins` of the tokens' own twins. */
export function devoicedMora(tokens: readonly TimedToken[], level = 0.95): DevoicedMora | null {
  return ratioOfTwins(twinMorae(tokens), level);
}

type Sums = { tokens: number; sumLogMs: number; sumSquareLogMs: number };

function isMora(consonant: TimedToken, vowel: TimedToken): boolean {
  return (
    vowel.kind === "vowel" &&
    vowel.length !== "long" &&
    vowel.devoiced !== null &&
    consonant.kind === "consonant" &&
    consonant.length === "single" &&
    consonant.index + 1 === vowel.index &&
    consonant.utterance === vowel.utterance &&
    consonant.labelSet === vowel.labelSet
  );
}

function none(): Sums {
  return { tokens: 0, sumLogMs: 0, sumSquareLogMs: 0 };
}

function add(sums: Sums, logMs: number): void {
  sums.tokens++;
  sums.sumLogMs += logMs;
  sums.sumSquareLogMs += logMs * logMs;
}

function numbering(): (name: string) => number {
  const numbers = new Map<string, number>();
  return (name) => {
    if (!numbers.has(name)) numbers.set(name, numbers.size);
    return numbers.get(name)!;
  };
}
