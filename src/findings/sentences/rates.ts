import type { RateRow } from "../../estimates/rates.ts";
import { capital, formatAmount, formatCount, intervalName, percentRange, roundPercent } from "../format.ts";
import { type Basis, groupWarnings, mostSpeakers } from "./basis.ts";

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

function whose(row: RateRow): string {
  return row.scope === "one speaker" ? "this one speaker" : formatAmount(row.speakers, "speaker");
}

/** What one rate says. A mark written by a text rule is never called a rate, and one speaker never stands for others. */
export function rateSentence({ words, plural }: Subject, row: RateRow): string {
  if (!isMeasured(row)) {
    return `The text rule expects ${formatCount(row.devoiced)} of ${formatAmount(row.tokens, "case")} of ${words} to be devoiced. Nobody listened: this is predicted by rule, not a rate.`;
  }
  if (row.scope === "one speaker") {
    return `This one speaker devoices ${words} in ${roundPercent(row.estimate)} of ${formatAmount(row.tokens, "case")} (${range(row)}, for this speaker only).`;
  }
  return `${capital(words)} ${plural ? "are" : "is"} devoiced in ${roundPercent(row.estimate)} of ${formatAmount(row.tokens, "case")} (${range(row)}; ${whose(row)}).`;
}

/** Fewest vowels for a rate to be ranked among others. */
const enoughVowels = 10;

/** What a text rule marks, in a list: counts, no share. */
export function ruleCount(name: string, { devoiced, tokens }: RateRow): string {
  return `${name}: the rule marks ${formatCount(devoiced)} of ${formatAmount(tokens, "vowel")}.`;
}

/**
 * What several rates say beside one another: which is highest and lowest when their intervals stay apart, else that
 * the corpus does not tell them apart. The comparison is of separate intervals, so it errs on the side of "no difference".
 */
export function compareRates(rows: readonly NamedRate[], subject: Subject): string {
  const [only] = rows;
  if (only === undefined) return "Nothing in this corpus matches the choice.";
  if (rows.length === 1) return rateSentence(subject, only.row);
  const measured = rows.filter((item): item is { name: string; row: Measured } => isMeasured(item.row));
  if (measured.length === 0) {
    const marked = rows.reduce((sum, { row }) => sum + row.devoiced, 0);
    const cases = rows.reduce((sum, { row }) => sum + row.tokens, 0);
    return `The text rule expects ${formatCount(marked)} of ${formatAmount(cases, "case")} of ${subject.words} to be devoiced. This is predicted by rule, not a rate.`;
  }
  const widest = mostSpeakers(measured);
  const ranked = measured
    .filter(({ row }) => row.tokens >= enoughVowels && row.scope === widest.scope)
    .sort((a, b) => b.row.estimate - a.row.estimate);
  const top = ranked[0];
  const bottom = ranked.at(-1);
  if (top === undefined || bottom === undefined)
    return `Each of these rests on fewer than ${enoughVowels} vowels: too few to rank them.`;
  if (top === bottom) return `${capital(top.name)}: ${rateSentence(subject, top.row)}`;
  const [most, least] = [roundPercent(top.row.estimate), roundPercent(bottom.row.estimate)];
  const text =
    top.row.low > bottom.row.high
      ? `devoicing is most frequent for ${top.name} (${most}) and least for ${bottom.name} (${least}).`
      : `no clear difference: from ${least} for ${bottom.name} to ${most} for ${top.name}, with intervals that overlap.`;
  return widest.scope === "one speaker" ? `In this one speaker, ${text}` : capital(text);
}

/** How the marks behind rates came about, for the lines under a picture. */
export function rateBasis(rows: readonly NamedRate[]): Basis {
  const [first] = rows;
  if (first === undefined) return { counts: "", method: null, warnings: [] };
  const tokens = rows.reduce((sum, { row }) => sum + row.tokens, 0);
  const how = {
    measured: "devoicing measured from the audio",
    annotated: "devoicing marked by a person, or known because the speech was made",
    aligned: "devoicing from an aligner’s labels",
    predicted: "devoicing predicted from the text by a rule",
  }[first.row.basis];
  const widest = mostSpeakers(rows);
  return {
    counts: `${formatAmount(tokens, "vowel")}, ${formatAmount(widest.speakers, "speaker")}; ${how}.`,
    method: first.row.basis === "predicted" ? null : `Interval: ${widest.method}.`,
    warnings: groupWarnings(rows),
  };
}

/** How far speakers' own rates lie apart, and the rate over all of them. */
export function speakerRatesSentence(shares: readonly number[], overall: RateRow): string {
  const span = percentRange(Math.min(...shares), Math.max(...shares));
  const over = isMeasured(overall)
    ? `; over all of them ${roundPercent(overall.estimate)} (${range(overall)})`
    : "";
  return `${formatAmount(shares.length, "speaker")} range from ${span}${over}.`;
}
