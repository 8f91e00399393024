import * as v from "valibot";
import * as messages from "../../messages/rules.ts";
import { UserError } from "../../messages/userError.ts";
import { checkRule } from "./checkRule.ts";
import { contrastKinds, judgedRuleSchema, needsRuleSchema, type Rule } from "./ruleSchema.ts";

/** Text of one rule file: one rule, or a list of rules. */
export interface RuleFile {
  /** As it is shown in errors. */
  readonly file: string;
  readonly json: string;
}

/**
 * The rules of these files, in their order. Throws a UserError that names file, rule, place, value and what is allowed
 * for anything that is not JSON, unknown fields, impossible ranges, and two rules with one id.
 */
export function parseRules(files: readonly RuleFile[]): Rule[] {
  const fileOf = new Map<string, string>();
  return files.flatMap(({ file, json }) => {
    const data = parseJson(file, json);
    const several = Array.isArray(data) ? data : [data];
    if (several.length === 0) throw new UserError(messages.ruleFileEmpty(file));
    return several.map((value, i) => {
      const rule = parseRule(value, file, Array.isArray(data) ? i : null);
      const earlier = fileOf.get(rule.id);
      if (earlier !== undefined) throw new UserError(messages.ruleTwice(rule.id, earlier, file));
      fileOf.set(rule.id, file);
      return rule;
    });
  });
}

function parseJson(file: string, json: string): unknown {
  if (json.trim() === "") throw new UserError(messages.ruleFileEmpty(file));
  try {
    return JSON.parse(json.replace(/^\uFEFF/, ""));
  } catch (error) {
    const reason = (error as Error).message;
    const at = /position (\d+)/.exec(reason)?.[1];
    const line = (at === undefined ? json : json.slice(0, Number(at))).split("\n").length;
    throw new UserError(messages.ruleFileNotJson(file, line, reason));
  }
}

function parseRule(value: unknown, file: string, index: number | null): Rule {
  const kind = (value as { contrast?: { kind?: unknown } } | null)?.contrast?.kind;
  const id = (value as { id?: unknown } | null)?.id;
  const name = typeof id === "string" ? `"${id}"` : index === null ? "in it" : `number ${index + 1}`;
  const fail = (faults: readonly string[]) => new UserError(messages.ruleInvalid(file, name, faults));
  if (kind === "needs") {
    const parsed = v.safeParse(needsRuleSchema, value);
    if (!parsed.success) throw fail(parsed.issues.map(fault));
    return parsed.output;
  }
  const parsed = v.safeParse(judgedRuleSchema, value);
  if (!parsed.success) throw fail(parsed.issues.map(fault));
  const faults = checkRule(parsed.output);
  if (faults.length > 0) throw fail(faults);
  return parsed.output;
}

const ownWording = new Set(["check", "raw_check", "regex", "min_length", "union"]);

function fault(issue: v.BaseIssue<unknown>): string {
  const place = v.getDotPath(issue) ?? "the rule";
  if (issue.type === "strict_object" && issue.expected === "never") return messages.unknownField(place);
  const wanted =
    place === "contrast.kind"
      ? contrastKinds.map((kind) => `"${kind}"`).join(" or ")
      : ownWording.has(issue.type) && !issue.message.startsWith("Invalid")
        ? issue.message
        : wording(issue);
  if (issue.type === "raw_check") return messages.badPhone(place, issue.message);
  if (issue.received === "undefined") return messages.missingField(place, exampleOf(place));
  return messages.wrongValue(place, JSON.stringify(issue.input), wanted);
}

const examples: Readonly<Record<string, string>> = {
  id: '"my-rule"',
  statement: '{"en": "…"}',
  source: '"from memory"',
  contrast: '{"kind": "rate", "of": {"called": "…", "where": {"vowel": "i,u"}}}',
  holds: '{"when": "more-than", "value": 0.5}',
  least: '{"tokens": 50, "speakers": 5}',
  tokens: "50",
  speakers: "5",
  where: '{"vowel": "i,u", "before": "voiceless"}',
};

function exampleOf(place: string): string | null {
  return examples[place.split(".").at(-1)!] ?? null;
}

/** What was expected, in words: `>=2` becomes "at least 2". */
function wording({ expected, message }: v.BaseIssue<unknown>): string {
  if (expected === null) return message;
  return expected
    .replace(/^>=/, "at least ")
    .replace(/^>/, "above ")
    .replace(/^</, "below ")
    .replace(/^\((.*)\)$/, "$1")
    .replaceAll(" | ", " or ")
    .replace(/^Object$/, "an object {…}")
    .replace(/^Array$/, "a list […]")
    .replace(/^(number|boolean|string)$/, "a $1");
}
