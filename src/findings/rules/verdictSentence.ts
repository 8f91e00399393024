import { interfaceText } from "../../interface/interfaceText.ts";
import { retold } from "../../interface/retold.ts";
import { formatDecimals } from "../format.ts";
import { regionOf, type Scale } from "./region.ts";
import type { Holds, JudgedRule, Rule, RuleSource } from "./ruleSchema.ts";
import type { JudgedPart, RuleVerdict } from "./verdict.ts";

type Unsaid = Omit<RuleVerdict, "sentence" | "asked">;
/** What of a rule its verdict's sentence speaks of. */
type Told = Pick<JudgedRule, "contrast" | "holds" | "least">;

const words = () => interfaceText().verdicts;

/** One or two sentences that say what a verdict rests on. Numbers as a teacher reads them; no p-values. */
export function verdictSentence(rule: Told | Exclude<Rule, JudgedRule>, verdict: Unsaid): string {
  const { dataset, speakers } = verdict;
  const say = words();
  if (verdict.verdict === "not measurable") return say.silent(dataset, retold(verdict.reason ?? ""));
  if (!("holds" in rule)) return "";
  if (verdict.verdict === "too little evidence") return tooLittle(rule, verdict);
  const asked = holdsText(rule.holds, verdict.scale!);
  return [
    say.judged(dataset, speakers, claimedOf(rule, verdict), intervalText(verdict), asked, tailOf(verdict)),
    ...exceptionsText(verdict),
    ...(speakers === 1 ? [say.nothingFollows] : []),
  ].join(" ");
}

function tailOf({ verdict, place, low, high }: Unsaid): string {
  const { tails } = words();
  if (verdict === "borne out" || verdict === "contradicted" || verdict === "too small to matter")
    return tails[verdict];
  if (verdict === "borne out in part") return tails.inPart[place ?? "open"];
  return low === null || high === null ? tails.openSide : tails.both;
}

function exceptionsText({ verdict, environments, bySpeaker }: Unsaid): string[] {
  const said: string[] = [];
  for (const which of ["failing", "holding"] as const) {
    if (which === "holding" && verdict === "borne out") continue;
    const places = environments?.[which] ?? [];
    if (places.length > 0) said.push(words().places(places.map(partText), which === "holding"));
    const people = (bySpeaker?.[which] ?? []).map(({ value }) => value);
    if (people.length > 0) said.push(words().people(people, bySpeaker!.judged, which === "holding"));
  }
  return said;
}

/** What a verdict counts: "sounds", "words", "morae". */
export function countedAs({ kind, detail }: Pick<RuleVerdict, "kind" | "detail">): string {
  const counted =
    kind === "devoiced-mora" ? "morae" : kind === "mora-count" && detail !== null ? detail : "sounds";
  return words().counted[counted] ?? counted;
}

/** True where the corpus holds nothing at all of what the rule compares: then there are no counts to show either. */
export function holdsNothing({ tokens }: Pick<RuleVerdict, "tokens">): boolean {
  return tokens.every((count) => count === 0);
}

function tooLittle({ least }: Told, verdict: Unsaid): string {
  const { dataset, tokens, speakers } = verdict;
  if (holdsNothing(verdict)) return words().nothing(dataset, countedAs(verdict));
  return Math.min(...tokens) < least.tokens
    ? words().tooFew(dataset, tokens, countedAs(verdict), least.tokens)
    : words().tooFewSpeakers(dataset, speakers, least.speakers);
}

function claimedOf({ contrast }: Told, { estimate, bound, sides, scale, detail }: Unsaid) {
  const rate = (side: number) => numberText(sides[side] ?? 0, "share");
  return {
    contrast: retoldCuts(contrast),
    value: numberText(estimate!, scale!),
    size: numberText(Math.abs(estimate!), scale!),
    negative: estimate! < 0,
    ...{ bound, detail: detail === null ? null : retold(detail) },
    sides: [rate(0), rate(1)] as const,
  };
}

/** The contrast with its cuts called as in the language of the page. */
function retoldCuts(contrast: Told["contrast"]): Told["contrast"] {
  const cut = <C extends { readonly called: string }>(one: C): C => ({ ...one, called: retold(one.called) });
  if (contrast.kind === "rate") return { ...contrast, of: cut(contrast.of) };
  if (contrast.kind === "rate-difference" || contrast.kind === "duration-ratio")
    return { ...contrast, first: cut(contrast.first), second: cut(contrast.second) };
  return contrast;
}

type Judged = Pick<RuleVerdict, "low" | "high" | "scale">;

/** A judged interval with its level: "95 % interval 76.8 to 92.0 %", "95 % interval: 1.86 times or more". */
export function intervalText({ level, ...judged }: Judged & Pick<RuleVerdict, "level">): string {
  const open = judged.high === null || isOpenBelow(judged);
  return words().interval(String(Number((100 * level).toFixed(2))), boundsText(judged), open);
}

/** The bounds alone: "76.8 to 92.0 %", "1.86 times or more" where the other side is open. */
export function boundsText(judged: Judged): string {
  const { low, high } = judged;
  const scale = judged.scale!;
  if (high === null) return words().orMore(numberText(low!, scale));
  return isOpenBelow(judged) ? words().orLess(numberText(high, scale)) : rangeText(low!, high, scale);
}

function isOpenBelow({ low, scale }: Judged): boolean {
  return low === null || (low === 0 && scale === "ratio");
}

/** What counts as holding, in words. */
export function holdsText(holds: Holds, scale: Scale): string {
  const say = (value: number) => numberText(value, scale);
  if (holds.when === "between")
    return words().holds({ when: "between", range: rangeText(holds.from, holds.to, scale) }, scale);
  if (holds.when === "about") {
    const margin = scale === "ratio" ? `${Math.round(100 * holds.margin)} %` : say(holds.margin);
    return words().holds({ when: "about", value: say(holds.value), margin }, scale);
  }
  const none = scale === "ratio" ? 1 : 0;
  const limit = holds.value === none && scale !== "share" ? null : say(holds.value);
  const { smallLow, smallHigh } = regionOf(holds, scale);
  const edge = holds.when === "more-than" ? smallHigh : smallLow;
  const small = holds.negligible === undefined ? null : say(edge);
  return words().holds({ when: holds.when, limit, small }, scale);
}

/** `0.923` as a share is "92.3 %", as a difference "92.3 points", as a ratio "0.92 times". */
export function numberText(value: number, scale: Scale): string {
  return words().number(digits(value, scale), scale);
}

function digits(value: number, scale: Scale): string {
  const shown = scale === "share" || scale === "difference" ? 100 * value : value;
  return formatDecimals(shown, scale === "hertz" ? 0 : scale === "share" || scale === "difference" ? 1 : 2);
}

/** "2.15 to 2.80 times": the unit once. */
function rangeText(low: number, high: number, scale: Scale): string {
  return words().range(digits(low, scale), digits(high, scale), scale);
}

/** An environment in words: "before /h/", "at the end of a stretch between pauses". */
export function partText({ column, value }: Pick<JudgedPart, "column" | "value">): string {
  return words().part(column, value, words().sounds[value] ?? `/${value}/`);
}

export function sourceSentence(source: RuleSource): string {
  return typeof source === "string" ? source : `${source.citation} (${words().marks[source.mark]})`;
}
