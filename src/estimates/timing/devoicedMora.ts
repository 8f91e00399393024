import { type Basis, isEvidence } from "../../basis.ts";
import { type PairedRatio, pairedRatio, type Stratum } from "../pairedRatio.ts";
import type { TimedToken } from "./stretches.ts";

/** Duration of a mora with a devoiced vowel against the same mora voiced. */
export interface DevoicedMora extends Omit<PairedRatio, "equalWeight"> {
  readonly devoicedTokens: number;
  readonly voicedTokens: number;
  /** Morae (consonant and vowel) that occur both ways with one speaker. */
  readonly morae: readonly string[];
}

type Sums = { tokens: number; sumLogMs: number; sumSquareLogMs: number };

/**
 * Ratio of geometric mean durations of consonant + vowel, devoiced to voiced, each mora compared with itself within a
 * speaker. 1 means that the devoiced mora keeps its time. Only marks that are evidence count; geminates and long vowels
 * are left out. Tokens in the order of the recordings. Null where no mora occurs both ways or nothing varies.
 */
export function devoicedMora(tokens: readonly TimedToken[], level = 0.95): DevoicedMora | null {
  const found = new Map<string, { mora: string; speaker: string; devoiced: Sums; voiced: Sums }>();
  for (let i = 1; i < tokens.length; i++) {
    const [consonant, vowel] = [tokens[i - 1]!, tokens[i]!];
    if (!isMora(consonant, vowel) || !isEvidence(vowel.devoicedBasis as Basis | null)) continue;
    const mora = consonant.phone + vowel.phone;
    const key = `${vowel.dataset}\u0000${vowel.labelSet}\u0000${vowel.speaker}`;
    const pair = found.get(`${key}\u0000${mora}`) ?? { mora, speaker: key, devoiced: none(), voiced: none() };
    found.set(`${key}\u0000${mora}`, pair);
    add(vowel.devoiced ? pair.devoiced : pair.voiced, Math.log(consonant.durationMs + vowel.durationMs));
  }
  const number = numbering();
  const both = [...found.values()].filter((pair) => pair.devoiced.tokens > 0 && pair.voiced.tokens > 0);
  const strata = both.map(
    ({ mora, speaker, devoiced, voiced }): Stratum => ({
      speaker: number(speaker),
      phone: number(mora),
      long: devoiced,
      short: voiced,
    }),
  );
  const ratio = strata.length === 0 ? null : pairedRatio(strata, level);
  if (ratio === null) return null;
  const { equalWeight: _, ...rest } = ratio;
  const count = (side: "devoiced" | "voiced") => both.reduce((sum, pair) => sum + pair[side].tokens, 0);
  return {
    ...rest,
    devoicedTokens: count("devoiced"),
    voicedTokens: count("voiced"),
    morae: [...new Set(both.map((pair) => pair.mora))].sort(),
  };
}

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
