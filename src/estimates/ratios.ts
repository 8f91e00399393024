import type { Basis } from "../basis.ts";
import { devoicedAmongShort, onesidedCuts } from "../messages/estimates.ts";
import type { Cells } from "./cells.ts";
import { type ContrastOptions, contrastGroups } from "./contrastGroups.ts";
import type { CrossedRatio } from "./crossedRatio.ts";
import type { Cut } from "./dimensions.ts";
import { filterRestrictions } from "./filter.ts";
import { type Contrast, type Surroundings, selectContrast, sides } from "./lengthContrast.ts";
import { type RatioCore, ratioCore } from "./ratioCore.ts";
import type { VoicedRatio } from "./voicedRatio.ts";

export interface RatioRow extends RatioCore {
  readonly by: Cut;
  /** Words that the sounds stand in; null where only cells are at hand, which hold no words. */
  readonly words: number | null;
  /** The interval where words count as belonging together too; null likewise, and where too few words stand on a side. */
  readonly crossed: CrossedRatio | null;
  /** The same without devoiced vowels; null likewise, and where no short vowel is known to be devoiced. */
  readonly voiced: VoicedRatio | null;
  /** How the boundaries came about. */
  readonly basis: Basis;
  readonly dataset: string;
  readonly labelSet: string;
  readonly contrast: Contrast;
  /** Null for geminates. */
  readonly surroundings: Surroundings | null;
}

export type RatioOptions = ContrastOptions;

export interface Ratios {
  readonly rows: RatioRow[];
  /** What the reader must know beyond the rows, in whole sentences. */
  readonly notes: string[];
}

/**
 * Duration ratios of long to short vowels or of geminates to single consonants, one row a combination of the `by`
 * columns, in the order of their labels. Datasets, label sets and bases are never pooled. A row that holds several
 * phones compares each with itself only. Throws a UserError when asked to cut by length.
 */
export function durationRatios(cells: Cells, options: RatioOptions): Ratios {
  const { contrast, level = 0.95, surroundings = "consonants" } = options;
  const { groups, shown, notes } = contrastGroups(cells, options);
  const rows: RatioRow[] = [];
  const found = new Map<string, { rows: number; of: number }>();
  const meet = (phone: string, onesided: 0 | 1) => {
    const { rows: before, of } = found.get(phone) ?? { rows: 0, of: 0 };
    found.set(phone, { rows: before + onesided, of: of + 1 });
  };
  for (const group of groups) {
    for (const phone of group.onesided) meet(phone, 1);
    for (const { phone } of group.pairs) meet(phone, 0);
    if (group.pairs.length === 0) continue;
    rows.push({
      by: Object.fromEntries(shown.map((dim) => [dim, group.label(dim)])),
      ...ratioCore(group.pairs, group.strata, level),
      ...{ words: null, crossed: null, voiced: null },
      basis: group.label("timeBasis") as Basis,
      dataset: String(group.label("dataset")),
      labelSet: String(group.label("labelSet")),
      contrast,
      surroundings: contrast === "gemination" ? null : surroundings,
    });
  }
  if (contrast === "vowel-length") notes.push(...devoicedNote(cells, options));
  const onesided = [...found]
    .filter(([, { rows: without }]) => without > 0)
    .map(([phone, counts]) => ({ phone, ...counts }))
    .sort((a, b) => (a.phone < b.phone ? -1 : 1));
  if (onesided.length > 0) notes.push(onesidedCuts(onesided, contrast));
  return { rows, notes };
}

/** Says how many of the short vowels are devoiced, where somebody heard it. */
function devoicedNote(
  cells: Cells,
  { contrast, filter, surroundings = "consonants" }: RatioOptions,
): string[] {
  const { length, devoicedBasis } = cells.dimensions;
  const short = length.labels.indexOf(sides[contrast].short);
  const predicted = devoicedBasis.labels.indexOf("predicted");
  let devoiced = 0;
  let tokens = 0;
  for (const cell of selectContrast(cells, filterRestrictions(filter), contrast, surroundings)) {
    if (length.codes[cell] !== short) continue;
    tokens += cells.tokens[cell]!;
    if (devoicedBasis.codes[cell] !== predicted) devoiced += cells.devoiced[cell]!;
  }
  return devoiced === 0 ? [] : [devoicedAmongShort(devoiced, tokens)];
}
