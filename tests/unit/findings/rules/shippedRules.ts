import { parseRules } from "../../../../src/findings/rules/parseRules.ts";
import type { JudgedRule, Rule } from "../../../../src/findings/rules/ruleSchema.ts";
import { loadRules } from "../../../../src/storage/loadRules.ts";

export async function shippedRules(): Promise<Rule[]> {
  return parseRules(await loadRules());
}

/** Those that cells can judge. */
export async function judgeableRules(): Promise<JudgedRule[]> {
  return (await shippedRules()).filter((rule): rule is JudgedRule => "holds" in rule);
}
