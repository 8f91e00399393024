import type { Cells } from "../../estimates/cells.ts";
import { durationRatios } from "../../estimates/ratios.ts";
import { manyDevoiced } from "../sentences/voicedRatios.ts";

/** How much longer a sound's long kind is in this corpus. */
export interface LengthRatio {
  readonly phone: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly tokens: number;
  readonly speakers: number;
  /** `at least` when the aligner's floor makes the ratio a lower bound. */
  readonly bound: "at least" | null;
  readonly basis: string;
  /** Share of the short vowels that are devoiced and counted too, which makes the ratio larger; null where hardly any is. */
  readonly devoicedShare: number | null;
}

export interface LengthEvidence {
  readonly vowels: Readonly<Record<string, LengthRatio>>;
  readonly consonants: Readonly<Record<string, LengthRatio>>;
}

/** Length ratios by sound, and of all sounds together under `all`, of one labelling of one dataset. */
export function lengthEvidence(
  cells: Cells,
  dataset: string,
  labelSet: string,
  level = 0.95,
): LengthEvidence {
  const of = (contrast: "vowel-length" | "gemination") => {
    const found: Record<string, LengthRatio> = {};
    for (const by of [[], ["phone"]] as const)
      for (const row of durationRatios(cells, {
        contrast,
        by,
        level,
        filter: { dataset: [dataset], labelSet: [labelSet] },
      }).rows) {
        const { estimate, low, high, tokens, speakers, bound, basis } = row;
        if (estimate === null || low === null || high === null) continue;
        const phone = row.by.phone ?? "all";
        const devoicedShare = manyDevoiced(row) ? row.short.devoiced! / row.short.tokens : null;
        found[phone] = { phone, estimate, low, high, tokens, speakers, bound, basis, devoicedShare };
      }
    return found;
  };
  return { vowels: of("vowel-length"), consonants: of("gemination") };
}
