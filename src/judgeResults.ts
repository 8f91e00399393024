import type { Cells } from "./estimates/cells.ts";
import { type JudgeOptions, judgeRules } from "./findings/rules/judgeRule.ts";
import type { Rule } from "./findings/rules/ruleSchema.ts";
import type { RuleVerdict } from "./findings/rules/verdict.ts";
import { onlyEveryNthRecording } from "./messages/rules.ts";
import { loadSomeTokens } from "./storage/loadTokens.ts";

/** Vowels and consonants by which rules are judged; more would take gigabytes and add hardly any certainty. */
const mostTokens = 400_000;

/** Verdicts on rules by a results folder: by its cells, or by its tokens where a rule asks for them; with examples. */
export async function judgeResults(
  results: string,
  rules: readonly Rule[],
  cells: Cells,
  options: Omit<JudgeOptions, "tokens" | "tokenNotices"> = {},
): Promise<RuleVerdict[]> {
  const { table, every, of } = await loadSomeTokens(results, mostTokens);
  const tokenNotices = every === 1 ? [] : [onlyEveryNthRecording(every, table.size, of)];
  return judgeRules(rules, cells, { ...options, tokens: table, tokenNotices });
}
