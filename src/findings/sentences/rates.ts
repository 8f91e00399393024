import { enoughVowels } from "../../estimates/rateSafety.ts";
import type { RateRow } from "../../estimates/rates.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { retold } from "../../interface/retold.ts";
import { capital, formatAmount, formatCount, intervalName, percentRange, roundPercent } from "../format.ts";
import { type Basis, groupWarnings, mostSpeakers } from "./basis.ts";
import { type DifferenceOf, judgeExtremes } from "./judgeExtremes.ts";

/** A row of rates under the name it has in the picture. */
export interface NamedRate {
  readonly name: string;
  readonly row: RateRow;
}

/** What is counted, as it stands in a sentence. */
export interface Subject {
  readonly words: string;
  readonly plural: boolean;
}

type Measured = RateRow & { readonly estimate: number; readonly low: number; readonly high: number };

function isMeasured(row: RateRow): row is Measured {
  return row.estimate !== null && row.low !== null && row.high !== null;
}

function range({ low, high, level }: Measured): string {
  return `${intervalName(level)} ${percentRange(low, high)}`;
}

/** What one rate says. A mark written by a text rule is never called a rate, and one speaker never stands for others. */
export function rateSentence({ words, plural }: Subject, row: RateRow): string {
  const say = interfaceText().sentences.rates;
  const cases = formatAmount(row.tokens, "case");
  if (!isMeasured(row)) return say.expected(words, formatCount(row.devoiced), cases, true);
  const rate = roundPercent(row.estimate);
  return row.scope === "one speaker"
    ? say.oneSpeaker(words, rate, cases, range(row))
    : say.several(words, plural, rate, cases, range(row), formatAmount(row.speakers, "speaker"));
}

/** What a text rule marks, in a list: counts, no share. */
export function ruleCount(name: string, { devoiced, tokens }: RateRow): string {
  const { ruleMarks } = interfaceText().sentences.rates;
  return ruleMarks(name, formatCount(devoiced), formatAmount(tokens, "vowel"));
}

/**
 * What several rates say beside one another: which is highest and which lowest. Whether the one surely lies above the other
 * is judged by the interval of their difference (`judgeExtremes`); without `differenceOf`, by their own intervals, which
 * leave the order open where they overlap, and do not deny it. Nothing is said of the order of those between.
 */
export function compareRates(
  rows: readonly NamedRate[],
  subject: Subject,
  differenceOf: DifferenceOf = () => null,
): string {
  const say = interfaceText().sentences.rates;
  const [only] = rows;
  if (only === undefined) return interfaceText().sentences.nothing;
  if (rows.length === 1) return rateSentence(subject, only.row);
  const measured = rows.filter((item): item is { name: string; row: Measured } => isMeasured(item.row));
  if (measured.length === 0) {
    const marked = rows.reduce((sum, { row }) => sum + row.devoiced, 0);
    const cases = rows.reduce((sum, { row }) => sum + row.tokens, 0);
    return say.expected(subject.words, formatCount(marked), formatAmount(cases, "case"), false);
  }
  const widest = mostSpeakers(measured);
  const ranked = measured
    .filter(({ row }) => row.tokens >= enoughVowels && row.scope === widest.scope)
    .sort((a, b) => b.row.estimate - a.row.estimate);
  const top = ranked[0];
  const bottom = ranked.at(-1);
  if (top === undefined || bottom === undefined) return say.tooFew(enoughVowels);
  if (top === bottom) return say.of(top.name, rateSentence(subject, top.row));
  const [most, least] = [roundPercent(top.row.estimate), roundPercent(bottom.row.estimate)];
  const judged = judgeExtremes(top.row, bottom.row, ranked.length, differenceOf);
  const sure = judged?.sure ?? top.row.low > bottom.row.high;
  const difference = judged?.difference ?? null;
  const text = sure
    ? say.apart(top.name, most, bottom.name, least, difference, ranked.length > 2)
    : say.open(top.name, most, bottom.name, least, difference);
  return widest.scope === "one speaker" ? say.byOne(text) : capital(text);
}

/** How the marks behind rates came about, for the lines under a picture. */
export function rateBasis(rows: readonly NamedRate[]): Basis {
  const [first] = rows;
  if (first === undefined) return { counts: "", method: null, warnings: [] };
  const tokens = rows.reduce((sum, { row }) => sum + row.tokens, 0);
  const say = interfaceText().sentences.rates;
  const widest = mostSpeakers(rows);
  return {
    counts: say.counts(
      formatAmount(tokens, "vowel"),
      formatAmount(widest.speakers, "speaker"),
      say.how[first.row.basis],
    ),
    method: first.row.basis === "predicted" ? null : say.method(retold(widest.method)),
    warnings: groupWarnings(rows),
  };
}

/** How far speakers' own rates lie apart, and the rate over all of them. */
export function speakerRatesSentence(shares: readonly number[], overall: RateRow): string {
  const say = interfaceText().sentences.rates;
  const span = percentRange(Math.min(...shares), Math.max(...shares));
  const over = isMeasured(overall) ? say.overAll(roundPercent(overall.estimate), range(overall)) : "";
  return say.speakers(formatAmount(shares.length, "speaker"), span, over);
}
