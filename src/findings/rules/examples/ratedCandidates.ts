import { labelAt, type TokenTable } from "../../../estimates/tokenTable.ts";
import type { CellContrast, JudgedRule, RuleCut } from "../ruleSchema.ts";
import type { RuleVerdict } from "../verdict.ts";
import { type Candidate, rowsIn } from "./candidate.ts";

type Rated = Extract<CellContrast, { kind: "rate" | "rate-difference" }>;

/**
 * Vowels of the rule's cuts with a mark of the verdict's basis. What speaks for a rule that asks for much devoicing is a
 * devoiced vowel, for one that asks for little a voiced one; of two cuts the second the other way round. How clear a
 * vowel is, is how far its probability of being devoiced lies from one half; where none was measured, all are as clear.
 */
export function ratedCandidates(
  { holds }: JudgedRule,
  contrast: Rated,
  verdict: RuleVerdict,
  table: TokenTable,
): Candidate[] {
  const middle = holds.when === "between" ? (holds.from + holds.to) / 2 : holds.value;
  const asksMuch =
    holds.when === "more-than" ||
    (holds.when !== "less-than" && middle >= (contrast.kind === "rate" ? 0.5 : 0));
  const cuts: (readonly [RuleCut, boolean])[] =
    contrast.kind === "rate"
      ? [[contrast.of, asksMuch]]
      : [
          [contrast.first, asksMuch],
          [contrast.second, !asksMuch],
        ];
  return cuts.flatMap(([cut, forRule]) => candidatesOf(cut, forRule, verdict, table));
}

function candidatesOf({ where }: RuleCut, devoicedIsFor: boolean, verdict: RuleVerdict, table: TokenTable) {
  const { labels, numbers } = table;
  const found: Candidate[] = [];
  for (const row of rowsIn(table, verdict, { ...where, kind: "vowel" })) {
    const mark = labelAt(labels.devoiced, row);
    if (mark === null || labelAt(labels.devoicedBasis, row) !== verdict.basis) continue;
    const devoiced = mark === "true";
    const probability = numbers.devoicedProbability[row]!;
    const measured = !Number.isNaN(probability);
    const agrees = measured && probability >= 0.5 === devoiced;
    const distance = measured ? (agrees ? Math.abs(probability - 0.5) : 0.001) : 0.001;
    found.push({
      row,
      clarity: devoiced === devoicedIsFor ? distance : -distance,
      shows: devoiced ? "devoiced" : "voiced",
      value: measured ? probability : null,
    });
  }
  return found;
}
