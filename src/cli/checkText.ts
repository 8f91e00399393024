import type { CheckReport } from "../checkDataset.ts";
import type { Problem } from "../datasets/types.ts";
import * as wording from "../messages/check.ts";
import { place } from "../messages/datasets.ts";
import { printableLine } from "./printable.ts";

/** Problems of one rule that are shown unless all are asked for. */
const shownPerRule = 20;
const labelWidth = 16;

/** The card and the problems for people: problems by rule, those that leave something out first. */
export function checkText({ card, phones, readings, problems }: CheckReport, all: boolean): string {
  const rows: (readonly [string, string])[] = [
    ["version", card.version ?? ""],
    ["licence", card.licence.url === null ? card.licence.name : `${card.licence.name} (${card.licence.url})`],
    ["home page", card.homePage ?? ""],
    ["citation", card.citation ?? ""],
    ["layout", `${card.layout}: ${card.recognisedBy}`],
    ["speakers", wording.speakersLine(card)],
    ["recordings", wording.audioLine(card)],
    ["readings", wording.readingsLine(card, readings)],
    ...(card.labelSets.length === 0 ? [["labels", "none"] as const] : []),
    ...card.labelSets.flatMap((set) => [
      ["labels", wording.labelSetLine(set, phones[set.id] ?? 0, card.synthetic)] as const,
      ["", set.note] as const,
    ]),
    ["may be published", wording.redistributionLine(card.redistribution)],
    ...card.attribution.map((credit) => ["credit", credit] as const),
    ["notice", card.notice ?? ""],
  ];
  const lines = [
    card.name,
    ...rows
      .filter(([, value]) => value !== "")
      .map(([name, value]) => `  ${name.padEnd(labelWidth)} ${value}`),
    "",
    ...problemLines(problems, all),
  ];
  return `${lines.map(printableLine).join("\n")}\n`;
}

function problemLines(problems: readonly Problem[], all: boolean): string[] {
  if (problems.length === 0) return [wording.noProblems];
  const byRule = new Map<string, Problem[]>();
  for (const problem of problems) {
    const list = byRule.get(problem.rule);
    if (list === undefined) byRule.set(problem.rule, [problem]);
    else list.push(problem);
  }
  const excluding = (list: readonly Problem[]): number => list.filter(({ excluded }) => excluded).length;
  const groups = [...byRule].sort(([, a], [, b]) => excluding(b) - excluding(a) || b.length - a.length);
  return [
    wording.problemsLine(problems.length, excluding(problems)),
    ...groups.flatMap(([rule, list]) => ruleLines(rule, list, all)),
  ];
}

function ruleLines(rule: string, list: readonly Problem[], all: boolean): string[] {
  const shown = all ? list : list.slice(0, shownPerRule);
  const sameWayOut = list.every(({ wayOut }) => wayOut === list[0]!.wayOut);
  return [
    `  ${rule} (${list.length})`,
    ...shown.flatMap(({ file, line, message, wayOut }) => [
      `    ${place(file, line)}: ${message}`,
      ...(sameWayOut ? [] : [`      ${wayOut}`]),
    ]),
    ...(shown.length < list.length ? [`    ${wording.moreProblems(list.length - shown.length)}`] : []),
    ...(sameWayOut ? [`    → ${list[0]!.wayOut}`] : []),
  ];
}
