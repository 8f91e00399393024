import type { LogSums } from "../../../src/estimates/pairedRatio.ts";
import {
  type DevoicedMora,
  ratioOfTwins,
  type TwinMora,
} from "../../../src/estimates/timing/devoicedMora.ts";
import { ipaOf } from "../../../src/findings/soundNames.ts";

/** One mora in both forms. */
export interface TwinRow {
  readonly name: string;
  readonly devoicedMs: number;
  readonly voicedMs: number;
  readonly devoiced: number;
  readonly voiced: number;
  readonly speakers: number;
  /** Null where nothing varies. */
  readonly ratio: DevoicedMora | null;
}

/** One row a mora, those with most pairs first. */
export function twinRows(twins: readonly TwinMora[], level: number): TwinRow[] {
  const byMora = new Map<string, TwinMora[]>();
  for (const twin of twins) {
    const mora = twin.consonant + twin.vowel;
    byMora.set(mora, [...(byMora.get(mora) ?? []), twin]);
  }
  return [...byMora]
    .map(([mora, own]) => {
      const { consonant, vowel } = own[0]!;
      const ipa = ipaOf(consonant) + ipaOf(vowel);
      return { ...rowOf(own, level), name: ipa === mora ? mora : `${ipa} (${mora})` };
    })
    .sort((a, b) => Math.min(b.devoiced, b.voiced) - Math.min(a.devoiced, a.voiced));
}

/** Both means weight a speaker's mora alike, so that only the voicing differs between them. */
export function rowOf(own: readonly TwinMora[], level: number): Omit<TwinRow, "name"> {
  const sum = (pick: (twin: TwinMora) => number) => own.reduce((total, twin) => total + pick(twin), 0);
  const weight = ({ devoiced, voiced }: TwinMora) =>
    (devoiced.tokens * voiced.tokens) / (devoiced.tokens + voiced.tokens);
  const weights = sum(weight);
  const mean = (side: (twin: TwinMora) => LogSums) =>
    Math.exp(sum((twin) => (weight(twin) * side(twin).sumLogMs) / side(twin).tokens) / weights);
  return {
    devoicedMs: mean((twin) => twin.devoiced),
    voicedMs: mean((twin) => twin.voiced),
    devoiced: sum((twin) => twin.devoiced.tokens),
    voiced: sum((twin) => twin.voiced.tokens),
    speakers: new Set(own.map(({ speaker }) => speaker)).size,
    ratio: ratioOfTwins(own, level),
  };
}
