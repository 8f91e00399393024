import { isEvidence } from "../../basis.ts";
import type { Cells } from "../../estimates/cells.ts";
import { clusteredRate } from "../../estimates/clusteredRate.ts";
import { correctedRate, type DecisionAccuracy } from "../../estimates/correctedRate.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import { countsOf } from "../../estimates/rateContrasts.ts";
import { rateDifference } from "../../estimates/rateDifference.ts";
import { type RateGroup, rateGroups } from "../../estimates/rateGroups.ts";
import { rateWarnings, safeSpeakers } from "../../estimates/rateSafety.ts";
import { devoicingRates, type RateRow } from "../../estimates/rates.ts";
import { ratesWithWords } from "../../estimates/words.ts";
import { differenceMethod, fewSpeakers, oneSpeakerOnly } from "../../messages/estimates.ts";
import {
  correctedMethod,
  decisionByChance,
  decisionShrinksDifferences,
  decisionUncorrected,
} from "../../messages/rules.ts";
import { mainBasis } from "../sentences/mainBasis.ts";
import type { RuleEvidence } from "./evidence.ts";
import type { Reading, ReadOptions } from "./reading.ts";
import type { RuleContrast } from "./ruleSchema.ts";
import { allowingForWords, wordDoubts } from "./wordDoubts.ts";

type Rate = Extract<RuleContrast, { kind: "rate" }>;
type Difference = Extract<RuleContrast, { kind: "rate-difference" }>;

const apart: readonly Dim[] = ["dataset", "labelSet"];

/**
 * Devoicing rate of the rule's cut, one reading a corpus, or a corpus and value of `column`. Of several bases the one
 * that most vowels carry is judged: the few that a person corrected are no sample. For a whole corpus with its tokens at
 * hand the interval also allows for words.
 */
export function readRate(
  { cells, tokens }: RuleEvidence,
  { of }: Rate,
  column: Dim | null,
  options: ReadOptions,
): Reading[] {
  const by = column === null ? apart : [...apart, column];
  const { level, accuracy } = options;
  const asked = { filter: of.where, by, level, ...(accuracy === undefined ? {} : { accuracy }) };
  const found = devoicingRates(cells, asked);
  const withWords = column === null && tokens !== null && options.theseWords !== true;
  const { rows } = withWords ? ratesWithWords(found, tokens, asked) : found;
  return mainBasis(rows).main.flatMap((row) => {
    const part = partOf(column, row.by);
    if (part === undefined) return [];
    const corrects = accuracy !== undefined && row.basis === "measured";
    const { estimate, low, high } =
      (corrects ? correctedOf(row, accuracy, level) : { ...row, ...allowingForWords(row) }) ?? nothing;
    const interval = low === null || high === null ? null : { low, high };
    return [
      {
        ...{ dataset: row.dataset, labelSet: row.labelSet, basis: row.basis, part },
        ...{ evidence: isEvidence(row.basis), estimate, interval, judged: interval, bound: null },
        ...{ tokens: [row.tokens], speakers: row.speakers, sides: [estimate] },
        reason: corrects && row.corrected === null ? decisionByChance() : null,
        method: corrects ? correctedMethod(row.method) : row.method,
        warnings: [
          ...row.warnings,
          ...(isEvidence(row.basis) ? wordDoubts(row) : []),
          ...(row.basis === "measured" && !corrects ? [decisionUncorrected()] : []),
        ],
      },
    ];
  });
}

function correctedOf(row: RateRow, accuracy: DecisionAccuracy, level: number) {
  const { estimate } = row;
  const { low, high } = allowingForWords(row);
  if (row.crossed === null || estimate === null || low === null || high === null) return row.corrected;
  return correctedRate({ estimate, low, high }, accuracy, level);
}

const nothing = { estimate: null, low: null, high: null };

/** Rate of the first cut minus that of the second, each speaker set against itself. */
export function readRateDifference(
  cells: Cells,
  { first, second }: Difference,
  column: Dim | null,
  { level }: ReadOptions,
): Reading[] {
  const by = column === null ? apart : [...apart, column];
  const groupsOf = ({ where }: Difference["first"]) =>
    rateGroups(cells, where, by).groups.map((group) => ({ ...group, tokens: sum([...group.marked]) }));
  const groups = [groupsOf(first), groupsOf(second)] as const;
  const main = new Set(mainBasis(groups.flat()).main);
  const byKey = (own: readonly (RateGroup & { readonly tokens: number })[]) =>
    new Map<string, RateGroup>(
      own.filter((group) => main.has(group)).map((group) => [groupKey(group, column), group]),
    );
  const [a, b] = [byKey(groups[0]), byKey(groups[1])];
  return [...new Set([...a.keys(), ...b.keys()])].flatMap((key) => {
    const one = (a.get(key) ?? b.get(key))!;
    const part = partOf(column, one.by);
    return part === undefined ? [] : [differenceOf(one, part, a.get(key), b.get(key), level)];
  });
}

function differenceOf(
  { dataset, labelSet, basis }: RateGroup,
  part: Reading["part"],
  first: RateGroup | undefined,
  second: RateGroup | undefined,
  level: number,
): Reading {
  const speakers = [...new Set([...(first?.speakers ?? []), ...(second?.speakers ?? [])])];
  const [a, b] = [first, second].map((group) =>
    group === undefined ? { marked: [], devoiced: [] } : countsOf(group, speakers),
  ) as [ReturnType<typeof countsOf>, ReturnType<typeof countsOf>];
  const evidence = isEvidence(basis);
  const found = evidence && first && second ? rateDifference(a, b, level) : null;
  const interval = found === null ? null : { low: found.low, high: found.high };
  const rateOf = ({ marked, devoiced }: typeof a) =>
    evidence && sum(marked) > 0 ? sum(devoiced) / sum(marked) : null;
  return {
    ...{ dataset, labelSet, basis, part, evidence },
    ...{ estimate: found?.difference ?? null, interval, judged: interval, bound: null },
    ...{
      tokens: [sum(a.marked), sum(b.marked)],
      speakers: Math.min(saidBy(a), saidBy(b)),
      sides: [rateOf(a), rateOf(b)],
    },
    method: found === null ? "" : differenceMethod(found.method, speakers.length),
    reason: null,
    warnings: [
      ...(evidence ? sideDoubts(a, b, speakers.length, level) : []),
      ...(basis === "measured" ? [decisionShrinksDifferences()] : []),
    ],
  };
}

/** Speakers who show a cut at all; a difference rests on the cut with fewer. */
function saidBy({ marked }: ReturnType<typeof countsOf>): number {
  return marked.filter((count) => count > 0).length;
}

/** Doubts about the whole, and about either side alone where many speakers hide that few of them show it. */
function sideDoubts(
  first: ReturnType<typeof countsOf>,
  second: ReturnType<typeof countsOf>,
  speakers: number,
  level: number,
): string[] {
  const whole = speakerDoubts(speakers);
  if (whole.length > 0) return whole;
  const doubts = [first, second].flatMap(({ marked, devoiced }) => {
    const said = marked.map((count, k) => ({ count, hits: devoiced[k]! })).filter(({ count }) => count > 0);
    if (said.length === 0) return [];
    const counts = said.map(({ count }) => count);
    const rate = clusteredRate(
      counts,
      said.map(({ hits }) => hits),
      level,
    );
    return rateWarnings(rate.method, said.length, rate);
  });
  return [...new Set(doubts)];
}

/** None where nobody is heard at all: the verdict says so itself. */
export function speakerDoubts(speakers: number): string[] {
  if (speakers === 0) return [];
  if (speakers === 1) return [oneSpeakerOnly()];
  return speakers < safeSpeakers ? [fewSpeakers(speakers, safeSpeakers)] : [];
}

/** Undefined where the value is unknown: such tokens belong to no environment. */
export function partOf(
  column: Dim | null,
  by: Readonly<Partial<Record<Dim, string | null>>>,
): Reading["part"] | undefined {
  if (column === null) return null;
  const value = by[column];
  return value === null || value === undefined ? undefined : { column, value };
}

function groupKey({ dataset, labelSet, basis, by }: RateGroup, column: Dim | null): string {
  return [dataset, labelSet, basis, column === null ? "" : by[column]].join("\u0000");
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
