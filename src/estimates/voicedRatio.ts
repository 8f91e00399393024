import type { ComparedSounds } from "./crossedRatio.ts";
import { type PairedRatio, pairedRatio, type Stratum } from "./pairedRatio.ts";

/** A ratio of long to short vowels without the devoiced ones. */
export interface VoicedRatio extends Pick<PairedRatio, "estimate" | "low" | "high" | "speakers"> {
  readonly longTokens: number;
  readonly shortTokens: number;
  /** Short vowels left out because they are devoiced. */
  readonly devoicedShort: number;
}

/**
 * The ratio of a row without the vowels that were found to be devoiced (1 in `devoiced`), estimated as the row's own.
 * Null where no short vowel is devoiced, or nothing comparable is left.
 */
export function voicedRatio(
  { speaker, phone, long, logMs }: ComparedSounds,
  devoiced: ArrayLike<number>,
  level: number,
): VoicedRatio | null {
  const strata = new Map<string, { speaker: number; phone: number; long: Sums; short: Sums }>();
  let devoicedShort = 0;
  for (let i = 0; i < logMs.length; i++) {
    if (devoiced[i]) {
      if (!long[i]) devoicedShort++;
      continue;
    }
    const key = `${speaker[i]} ${phone[i]}`;
    const own = strata.get(key) ?? {
      ...{ speaker: speaker[i]!, phone: phone[i]! },
      ...{ long: noSums(), short: noSums() },
    };
    strata.set(key, own);
    const side = long[i] ? own.long : own.short;
    side.tokens++;
    side.sumLogMs += logMs[i]!;
    side.sumSquareLogMs += logMs[i]! ** 2;
  }
  if (devoicedShort === 0) return null;
  const compared = [...strata.values()].filter(({ long, short }) => long.tokens > 0 && short.tokens > 0);
  const found = compared.length === 0 ? null : pairedRatio(compared satisfies readonly Stratum[], level);
  if (found === null) return null;
  const tokens = (side: "long" | "short") =>
    [...strata.values()].reduce((sum, stratum) => sum + stratum[side].tokens, 0);
  const { estimate, low, high, speakers } = found;
  return {
    ...{ estimate, low, high, speakers, devoicedShort },
    longTokens: tokens("long"),
    shortTokens: tokens("short"),
  };
}

interface Sums {
  tokens: number;
  sumLogMs: number;
  sumSquareLogMs: number;
}

const noSums = (): Sums => ({ tokens: 0, sumLogMs: 0, sumSquareLogMs: 0 });
