import { cellsFromTokens } from "../../../../src/estimates/cellsFromTokens.ts";
import { judgeRule } from "../../../../src/findings/rules/judgeRule.ts";
import type { JudgedRule } from "../../../../src/findings/rules/ruleSchema.ts";
import { isOfTokens } from "../../../../src/findings/rules/tokenContrasts.ts";
import type { RuleVerdict } from "../../../../src/findings/rules/verdict.ts";
import type { SeededRandom } from "../../../../src/statistics/seededRandom.ts";
import { plainToken } from "../../estimates/sampleTokens.ts";
import { type Size, simulateRule, type Truth } from "./simulateRule.ts";
import { simulateTokens } from "./simulateTokens.ts";

const noCells = cellsFromTokens([{ ...plainToken, dataset: "d", labelSet: "l" }]);

/** The verdict on an invented corpus, whose tokens or cells the rule is judged by. */
export function judgeSimulated(
  rule: JudgedRule,
  truth: Truth,
  size: Size,
  random: SeededRandom,
): RuleVerdict {
  const verdicts = isOfTokens(rule.contrast)
    ? judgeRule(rule, noCells, { tokens: simulateTokens(rule, truth, size, random) })
    : judgeRule(rule, simulateRule(rule, truth, size, random));
  if (verdicts.length !== 1) throw new Error(`${rule.id}: ${verdicts.length} verdicts`);
  return verdicts[0]!;
}

/** Sizes a speaker and side with which 30 tokens come together. */
export function thirtyTokens(rule: JudgedRule): Size {
  const oneSide = ["rate", "formant", "mora-count"].includes(rule.contrast.kind);
  return { speakers: 1, tokens: rule.contrast.kind === "vowel-separation" ? 6 : oneSide ? 30 : 15 };
}
