import { exampleText, exampleValue } from "../findings/rules/exampleText.ts";
import type { RuleVerdict } from "../findings/rules/verdict.ts";
import { countedAs, holdsNothing, partText } from "../findings/rules/verdictSentence.ts";
import { interfaceText } from "../interface/interfaceText.ts";
import { ruleCsvColumns } from "../messages/csvColumns.ts";
import { toCsv } from "../storage/writeCsv.ts";
import { printable } from "./printable.ts";

const manyVerdicts = (level: number) => interfaceText().rules.many(String(Number((100 * level).toFixed(2))));

/** Verdicts as the format asks, ready for standard output. */
export function formatVerdicts(verdicts: readonly RuleVerdict[], format: "text" | "json" | "csv"): string {
  if (format === "json") return `${JSON.stringify(verdicts, null, 2)}\n`;
  if (format === "csv") return toCsv(Object.keys(ruleCsvColumns), verdicts.map(csvRow));
  return verdicts.length === 0 ? "" : printable(textOf(verdicts));
}

function csvRow(verdict: RuleVerdict): object {
  const { statement, holds, tokens, warnings, environments, bySpeaker } = verdict;
  const parts = (which: "holding" | "failing") =>
    [environments, bySpeaker].flatMap((judged) => (judged?.[which] ?? []).map(partText)).join("; ");
  return {
    ...verdict,
    ...{ statement: statement.en, holds: holds === null ? null : JSON.stringify(holds) },
    ...{ tokens: tokens.join(" "), warnings: warnings.join(" ") },
    ...{ holdsIn: parts("holding"), failsIn: parts("failing") },
  };
}

/** What is judged first, rule by rule: the verdict, a sentence with its numbers, their basis, and the source. */
function textOf(verdicts: readonly RuleVerdict[]): string {
  const rules = [...new Set(verdicts.map(({ rule }) => rule))].map((rule) =>
    verdicts.filter((verdict) => verdict.rule === rule),
  );
  const silent = (of: readonly RuleVerdict[]) => of.every(({ verdict }) => verdict === "not measurable");
  const ordered = [...rules.filter((of) => !silent(of)), ...rules.filter(silent)];
  return `${[...ordered.map(ruleText), manyVerdicts(verdicts[0]!.level)].join("\n\n")}\n`;
}

function ruleText(verdicts: readonly RuleVerdict[]): string {
  const { statement, source, note, rule } = verdicts[0]!;
  const judged = verdicts.filter(({ verdict }) => verdict !== "not measurable");
  const reasons = [...new Set(verdicts.flatMap(({ reason }) => reason ?? []))];
  return [
    `${statement.en}  [${rule}]`,
    ...judged.flatMap((verdict) => [
      `  ${headline(verdict)} · ${corpusName(verdict)}`,
      `    ${verdict.sentence}`,
      ...(verdict.basis === null || holdsNothing(verdict) ? [] : [`    ${countsOf(verdict)}`]),
      ...examplesOf(verdict),
      ...verdict.warnings.map((warning) => `    Mind: ${warning}`),
    ]),
    ...reasons.flatMap((reason) => [
      `  Not measurable · ${verdicts
        .filter((verdict) => verdict.reason === reason)
        .map(corpusName)
        .join(", ")}`,
      `    ${reason[0]!.toUpperCase()}${reason.slice(1)}.`,
    ]),
    ...(note === null ? [] : [`  Note: ${note}`]),
    `  Source: ${source}`,
  ].join("\n");
}

function corpusName({ dataset, labelSet }: RuleVerdict): string {
  return `${dataset} (${labelSet})`;
}

function headline({ verdict, scope }: RuleVerdict): string {
  const said = verdict[0]!.toUpperCase() + verdict.slice(1);
  return scope === "one speaker" ? `${said}, by this one speaker` : said;
}

function countsOf(verdict: RuleVerdict): string {
  const { tokens, speakers, basis, environments, bySpeaker } = verdict;
  const looked = [
    many(environments?.judged ?? 0, "environment"),
    many(bySpeaker?.judged ?? 0, "speaker"),
  ].filter((text) => text !== "");
  const judged = looked.length === 0 ? "" : `; looked for exceptions in ${looked.join(" and ")}`;
  const sounds = `${tokens.join(" and ")} ${countedAs(verdict)}`;
  const counts = [sounds, many(speakers, "speaker"), `basis ${basis}`].filter((text) => text !== "");
  return `${counts.join(", ")}${judged}`;
}

function examplesOf({ examples }: RuleVerdict): string[] {
  if (examples === null || examples.reason !== null) return [];
  const line = (sounds: typeof examples.clearest) =>
    sounds
      .map((sound) => {
        const told = [sound.utterance, sound.speaker, exampleValue(sound, examples.by)];
        return `${exampleText(sound)} (${told.filter((text) => text !== null).join(", ")})`;
      })
      .join("; ");
  return [
    ...(examples.clearest.length > 0 ? [`    Clearest: ${line(examples.clearest)}`] : []),
    ...(examples.mostContrary.length > 0 ? [`    Most contrary: ${line(examples.mostContrary)}`] : []),
  ];
}

function many(count: number, what: string): string {
  return count === 0 ? "" : `${count} ${what}${count === 1 ? "" : "s"}`;
}
