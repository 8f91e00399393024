import { thinNumber } from "../../messages/models.ts";
import type { Design } from "../../statistics/models/designMatrix.ts";
import type { CategoricalColumn } from "../../statistics/models/term.ts";
import { leastOutcomes, leastTokens, thinLevels } from "../../statistics/models/thinLevels.ts";

/** Speakers that a level needs, or all of them where there are fewer. */
const leastSpeakers = 3;

export interface ThinTerms {
  /** Whether the level, or the reference it is compared with, is thin; for a number (level null) whether the rows are. */
  readonly isThin: (term: string, level: string | null) => boolean;
  readonly texts: readonly string[];
}

/** Which effects of a model rest on too few tokens, speakers or, where `devoiced` is given, tokens of one outcome. */
export function thinTerms(
  design: Design,
  speakers: CategoricalColumn,
  devoiced: Float64Array | null,
): ThinTerms {
  const ones = new Float64Array(speakers.codes.length).fill(1);
  const all = new Set(Array.from(design.rows, (row) => speakers.codes[row]!)).size;
  const levels = thinLevels(design, ones, {
    ...(all > 1 ? { cluster: speakers.codes, clusters: Math.min(leastSpeakers, all) } : {}),
    ...(devoiced ? { successes: devoiced } : {}),
  });
  const marked = devoiced ? design.rows.reduce((sum, row) => sum + devoiced[row]!, 0) : 0;
  const rarer = devoiced ? Math.min(marked, design.rows.length - marked) : Number.POSITIVE_INFINITY;
  const thinRows = design.rows.length < leastTokens || rarer < leastOutcomes;
  const thin = (term: string, level: string) =>
    levels.some((one) => one.column === term && one.level === level);
  return {
    isThin: (term, level) => {
      if (level === null) return thinRows;
      const reference = design.factors.find(({ column }) => column === term)?.levels[0];
      return thin(term, level) || (reference !== undefined && thin(term, reference));
    },
    texts: [
      ...levels.map(({ text }) => text),
      ...(thinRows ? design.covariates.map(({ column }) => thinNumber(column, rarer)) : []),
    ],
  };
}
