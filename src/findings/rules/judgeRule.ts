import type { Cells } from "../../estimates/cells.ts";
import type { DecisionAccuracy } from "../../estimates/correctedRate.ts";
import type { Dim } from "../../estimates/dimensions.ts";
import { partition } from "../../estimates/partition.ts";
import { selectCells } from "../../estimates/selection.ts";
import type { TokenTable } from "../../estimates/tokenTable.ts";
import * as messages from "../../messages/rules.ts";
import { decide, fewestSpeakers } from "./decide.ts";
import {
  basisKey,
  extremes,
  finite,
  isContrary,
  isEnough,
  judgeParts,
  type PartReadings,
  readParts,
  shareOf,
  summarise,
} from "./judgeParts.ts";
import { readContrast } from "./readContrast.ts";
import { type Corpus, corpusKey, type Reading } from "./reading.ts";
import { placeOf, regionOf, scaleOf } from "./region.ts";
import type { JudgedRule, Rule } from "./ruleSchema.ts";
import { isOfTokens } from "./tokenContrasts.ts";
import type { RuleVerdict } from "./verdict.ts";
import { verdictExamples } from "./verdictExamples.ts";
import { sourceSentence, verdictSentence } from "./verdictSentence.ts";
import { whyUnreadable } from "./whyUnreadable.ts";

export interface JudgeOptions {
  /** Confidence level of the intervals, 0 to 1. Default 0.95. */
  readonly level?: number;
  /** How reliable measured devoicing is; rates by it are then judged corrected for its errors. */
  readonly accuracy?: DecisionAccuracy;
  /** Single vowels and consonants of the same corpora, for rules that cells cannot judge. Default: not at hand. */
  readonly tokens?: TokenTable | null;
  /** What must stand beside verdicts by tokens, such as that only some recordings were read. Default none. */
  readonly tokenNotices?: readonly string[];
  /** Sentences that must stand beside every number of a dataset, by its name: e.g. that its voices are synthetic. */
  readonly notices?: Readonly<Record<string, string>>;
}

/**
 * What each corpus in the cells says about a rule: one verdict a dataset and label set (and basis, where a label set
 * has several that are evidence), in the order of their names. Corpora are never pooled. Marks predicted by a text
 * rule are refused with the reason. With one speaker the verdict speaks of that speaker only.
 */
export function judgeRule(rule: Rule, cells: Cells, options: JudgeOptions = {}): RuleVerdict[] {
  const { notices = {}, tokenNotices = [] } = options;
  return judgeCorpora(rule, cells, options).map((verdict) => {
    const ofTokens = isOfTokens(rule.contrast) && verdict.basis !== null ? tokenNotices : [];
    const notice = notices[verdict.dataset];
    const warnings = [...(notice === undefined ? [] : [notice]), ...ofTokens, ...verdict.warnings];
    const shows = options.tokens && "holds" in rule && verdict.verdict !== "not measurable";
    return {
      ...verdict,
      warnings,
      examples: shows ? verdictExamples(rule, verdict, options.tokens!) : null,
    };
  });
}

function judgeCorpora(
  rule: Rule,
  cells: Cells,
  { level = 0.95, accuracy, tokens = null }: JudgeOptions,
): RuleVerdict[] {
  const corpora = corporaOf(cells);
  if (!("holds" in rule))
    return corpora.map((corpus) => unread(rule, corpus, level, messages.needsColumns(rule.contrast.columns)));
  if (isOfTokens(rule.contrast) && tokens === null)
    return corpora.map((corpus) => unread(rule, corpus, level, messages.tokensNotAtHand()));
  const options = { level, accuracy, theseWords: rule.words === "these" };
  const at = { cells, tokens };
  const whole = readContrast(at, rule.contrast, null, options);
  const judgeable = whole.some((reading) => reading.evidence && isEnough(reading, rule.least.tokens, 1));
  const parts = (columns: readonly Dim[], least: number) =>
    readParts(rule, at, judgeable ? columns : [], least, options);
  const environments = parts(rule.exceptions, rule.least.speakers);
  const speakers = parts(["speaker"], 1);
  return corpora.flatMap((corpus) => {
    const own = whole.filter((reading) => corpusKey(reading) === corpusKey(corpus));
    const evidence = own.filter((reading) => reading.evidence);
    if (evidence.length > 0)
      return evidence.map((reading) => judged(rule, reading, environments, speakers, level));
    const reason =
      own.length > 0 ? (own[0]!.reason ?? messages.marksByRule()) : whyUnreadable(rule, cells, corpus);
    return [unread(rule, corpus, level, reason)];
  });
}

function judged(
  rule: JudgedRule,
  reading: Reading,
  environments: PartReadings,
  speakers: PartReadings,
  level: number,
): RuleVerdict {
  const head = headOf(rule, reading, level);
  if (rule.boundaries === "annotated" && reading.basis === "aligned")
    return finished(rule, { ...head, verdict: "not measurable", reason: messages.boundariesUnsure() });
  const { least } = rule;
  const oneSpeaker = reading.speakers === 1;
  const enough =
    Math.min(...reading.tokens) >= least.tokens && (oneSpeaker || reading.speakers >= least.speakers);
  if (!enough || reading.judged === null || reading.estimate === null)
    return enough
      ? finished(rule, { ...head, verdict: "not measurable", reason: reading.reason ?? messages.noRatio() })
      : finished(rule, { ...head, verdict: "too little evidence" });

  const scale = scaleOf(rule.contrast);
  const region = regionOf(rule.holds, scale);
  const place = placeOf(reading.judged, region);
  const ofCorpus = ({ readings }: PartReadings) =>
    readings.filter((part) => basisKey(part) === basisKey(reading));
  const places = judgeParts(ofCorpus(environments), region, least.tokens, oneSpeaker ? 1 : least.speakers);
  const people = oneSpeaker ? [] : judgeParts(ofCorpus(speakers), region, least.tokens, 1);
  const shares = {
    holding: shareOf(places, ofCorpus(environments), ({ place }) => place === "holds"),
    contrary: shareOf(places, ofCorpus(environments), isContrary),
  };
  const count = (wanted: (part: (typeof people)[number]) => boolean) => {
    const found = people.filter(wanted).length;
    return found < fewestSpeakers ? 0 : found / reading.speakers;
  };
  const ofPeople = { holding: count(({ place }) => place === "holds"), contrary: count(isContrary) };
  return finished(rule, {
    ...head,
    verdict: decide(place, shares, ofPeople),
    place,
    environments: summarise(places, environments.level),
    bySpeaker: oneSpeaker ? null : summarise(people, speakers.level),
    ...extremes(places, region, scale),
  });
}

type Unfinished = Omit<RuleVerdict, "sentence">;

function finished(rule: Rule, verdict: Unfinished): RuleVerdict {
  return { ...verdict, sentence: verdictSentence(rule, verdict) };
}

function headOf(rule: JudgedRule, reading: Reading, level: number): Omit<Unfinished, "verdict"> {
  const none = { low: null, high: null };
  return {
    ...identity(rule, reading, level),
    ...{ kind: rule.contrast.kind, scale: scaleOf(rule.contrast), holds: rule.holds },
    ...{ estimate: reading.estimate, ...(reading.judged === null ? none : finite(reading.judged)) },
    ...{ bound: reading.bound, sides: reading.sides, tokens: reading.tokens, speakers: reading.speakers },
    detail: reading.detail ?? null,
    scope: reading.speakers === 1 ? "one speaker" : "speakers",
    ...{ basis: reading.basis, method: reading.method || null, warnings: reading.warnings },
  };
}

function unread(rule: Rule, corpus: Corpus, level: number, reason: string | null): RuleVerdict {
  const blank: Unfinished = {
    ...identity(rule, corpus, level),
    verdict: reason === null ? "too little evidence" : "not measurable",
    reason,
    ...("holds" in rule
      ? { kind: rule.contrast.kind, scale: scaleOf(rule.contrast), holds: rule.holds }
      : { kind: rule.contrast.kind, scale: null, holds: null }),
    ...{ estimate: null, low: null, high: null, bound: null, sides: [], tokens: [0], speakers: 0 },
    ...{ scope: "speakers", basis: null, method: null, warnings: [] },
  };
  return finished(rule, blank);
}

function identity(rule: Rule, { dataset, labelSet }: Corpus, level: number) {
  return {
    ...{
      rule: rule.id,
      statement: rule.statement,
      note: rule.note ?? null,
      source: sourceSentence(rule.source),
      asked: "holds" in rule ? { contrast: rule.contrast, least: rule.least } : null,
    },
    ...{ dataset, labelSet, level, reason: null, place: null, words: null },
    ...{ environments: null, bySpeaker: null, clearest: [], mostContrary: [], detail: null, examples: null },
  };
}

function corporaOf(cells: Cells): Corpus[] {
  const apart: readonly Dim[] = ["dataset", "labelSet"];
  const { count, codes } = partition(cells, selectCells(cells, []), apart);
  const label = (part: number, d: number) =>
    String(cells.dimensions[apart[d]!].labels[codes[part * apart.length + d]!]);
  return Array.from({ length: count }, (_, part) => ({ dataset: label(part, 0), labelSet: label(part, 1) }));
}

/** Verdicts on all rules, rule by rule. */
export function judgeRules(rules: readonly Rule[], cells: Cells, options: JudgeOptions = {}): RuleVerdict[] {
  return rules.flatMap((rule) => judgeRule(rule, cells, options));
}
