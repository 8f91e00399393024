import type { TokenTable } from "../../estimates/tokenTable.ts";
import * as messages from "../../messages/rules.ts";
import { chooseExamples } from "./examples/chooseExamples.ts";
import { ratedCandidates } from "./examples/ratedCandidates.ts";
import { timedCandidates } from "./examples/timedCandidates.ts";
import type { JudgedRule } from "./ruleSchema.ts";
import { isOfTokens } from "./tokenContrasts.ts";
import type { RuleVerdict, VerdictExamples } from "./verdict.ts";

/**
 * The sounds that show most clearly what a rule says and those that go against it most, three of each, of different
 * speakers first. Only sounds whose mark or time is of the verdict's own basis, never at an aligner's floor; the tokens
 * hold no recording that was set aside. The same tokens give the same examples.
 */
export function verdictExamples(rule: JudgedRule, verdict: RuleVerdict, table: TokenTable): VerdictExamples {
  const { contrast } = rule;
  const none = (reason: string): VerdictExamples => ({ by: null, clearest: [], mostContrary: [], reason });
  if (isOfTokens(contrast)) return none(messages.noSingleExample());
  if (verdict.basis === null) return none(messages.nothingToShow());
  const devoicing = contrast.kind === "rate" || contrast.kind === "rate-difference";
  const candidates = devoicing
    ? ratedCandidates(rule, contrast, verdict, table)
    : timedCandidates(rule, contrast, verdict, table);
  if (candidates.length === 0) return none(messages.nothingToShow());
  return {
    by: devoicing ? "probability" : "ratio",
    ...chooseExamples(candidates, table),
    reason: null,
  };
}
