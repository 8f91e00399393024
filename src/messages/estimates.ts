import type { DevoicingError } from "../estimates/devoicingError.ts";
/** The cells file lacks a column that every estimate needs. */
export function missingCellColumn(name: string): string {
  return `The cells have no column "${name}". They may come from another version: run the corpus again to write them anew.`;
}

export function raggedCellColumn(name: string, length: number, expected: number): string {
  return `The cells' column "${name}" has ${length} entries where ${expected} were expected. The file may be cut short: run the corpus again to write it anew.`;
}

/** The label set has no devoicing marks at all. */
export function noDevoicingMarks(dataset: string, labelSet: string, vowels: number): string {
  return `${dataset} (${labelSet}): its labels do not say which vowels are devoiced, so ${vowels} vowels give no rate. Measure devoicing from the recordings, or use labels that mark it.`;
}

export function nothingSelected(what: string): string {
  return `No ${what} in these results matches the filter. Loosen it, or leave out one restriction after the other to see which one excludes all.`;
}

export const predictedNotRate = "predicted by rule, not a rate";

export function predictedMarks(dataset: string, labelSet: string): string {
  return `${dataset} (${labelSet}): its devoicing marks were written from the text by a rule, the same for every speaker. They show what the rule expects, not what was said, so no rate is given.`;
}

export function oneSpeakerRate(): string {
  return "Wilson score interval over the tokens of one speaker: it speaks of this speaker only, and treats the tokens as independent";
}

export function clusteredRateMethod(speakers: number): string {
  return `share of tokens; interval clustered by ${speakers} speakers (logit scale, small-sample correction, t), not narrower than Wilson's`;
}

export function allOrNoneMethod(speakers: number, correlation: number): string {
  return `none or all devoiced: exact interval over ${speakers} speakers for the effective number of tokens, assuming a correlation of ${correlation} between tokens of a speaker`;
}

export function fewSpeakers(speakers: number, wanted: number): string {
  return `Only ${speakers} speakers: how much speakers differ is hardly known, so the interval is wide and its level only approximate. From ${wanted} speakers on it can be relied on.`;
}

export function oneSpeakerOnly(): string {
  return "One speaker: nothing follows about other speakers.";
}

export function fewShowing(speakers: number, wanted: number): string {
  return `Only ${speakers} speakers show the rarer outcome at all; below ${wanted} the interval's level is only approximate.`;
}

export function unevenSpeakers(): string {
  return "A few speakers show most of the rarer outcome; such an interval holds the truth less often than it says (93 to 95 % of the time in simulations instead of 95 %, less in unlucky corpora).";
}

/** Beside an interval that raises no other doubt. */
export function rateNearEdge(): string {
  return "The rate is near 0 or 100 %. Should speakers differ far more than these do, such an interval holds the truth less often than it says (71 to 90 % of the time in simulations, instead of 95 %).";
}

export function cutByLength(): string {
  return `"length" cannot be a cut of a length ratio: long and short are the two sides that it compares. Cut by another column, for example phone.`;
}

/** What a dash means, under the columns of `rates` and `ratios`. */
export const dashes = {
  words:
    "the words of more than a fifth of the sounds are unknown, or the results hold more than 400,000 sounds, which are not read for their words.",
  crossedRate: "words are not known (see “words”).",
  crossedRatio:
    "words are not known (see “words”), or one side of the comparison stands in too few words to allow for them.",
  equalRate: "there is one speaker only, or none or all of the vowels are devoiced.",
  corrected:
    "nothing tells how often the decision errs on these recordings, or the vowels were not measured. A blind sample marked by ear tells it (`morascope sample`, `run --marks`).",
  voiced: "no short vowel is known to be devoiced, so the ratio is the same; or single sounds are not read.",
  interval: "it cannot be estimated; the sentence under “mind” says why.",
  median: "half of the sounds or more stand at the aligner's shortest duration.",
  predicted: "marks written by a text rule have no interval.",
} as const;

/** A note that speaks of one of several datasets or label sets. */
export function noteOf(dataset: string, labelSet: string, note: string): string {
  return `${dataset} (${labelSet}): ${note}`;
}

/** Short vowels of a length ratio that were spoken without voice. */
export function devoicedAmongShort(devoiced: number, short: number): string {
  return `${devoiced} of the ${short} short vowels are devoiced (whispered), as hardly any long vowel is: they are shorter, and their edges harder to place. \`morascope ratios … --voiced-only\` compares without them.`;
}

/** Of all vowels of a dataset and label set, whatever the filter. */
export function leftOutDevoiced(devoiced: number, unknown: number): string {
  const left = `Left out: the ${devoiced} vowels of these results that were found to be devoiced.`;
  return unknown === 0 ? left : `${left} Of ${unknown} vowels nobody heard whether they are; they are kept.`;
}

/** Sounds that have only one side of the contrast in some rows; `rows`: in how many, `of` how many that have the sound. */
export function onesidedCuts(
  phones: readonly { readonly phone: string; readonly rows: number; readonly of: number }[],
  contrast: "vowel-length" | "gemination",
): string {
  const both = contrast === "gemination" ? "single and geminate" : "short and long";
  const always = phones.filter(({ rows, of }) => rows === of).map(({ phone }) => phone);
  const partly = phones
    .filter(({ rows, of }) => rows < of)
    .map(({ phone, rows, of }) => `${phone} (left out of ${rows} of ${of} cuts, counted in the others)`);
  return [
    ...(always.length > 0 ? [`Left out, since they nowhere occur both ${both}: ${always.join(", ")}.`] : []),
    ...(partly.length > 0 ? [`Not both ${both} in every cut: ${partly.join(", ")}.`] : []),
  ].join(" ");
}

export function oneSpeakerRatio(): string {
  return "ratio of geometric means; interval on the log scale over the tokens of one speaker (Welch): it speaks of this speaker only, and treats the tokens as independent";
}

export function clusteredRatioMethod(speakers: number): string {
  return `ratio of geometric means, compared within each of ${speakers} speakers; interval clustered by speaker (log scale, small-sample correction, t), not narrower than for independent tokens`;
}

export const ratioImpossible = "cannot be estimated";

export function unpairedSpeakers(): string {
  return "No speaker has both long and short tokens of one sound, so that a difference of length cannot be told from a difference between speakers.";
}

export function noSpread(): string {
  return "All durations are equal or there is one of each, so that their spread, and with it the certainty of a ratio, is unknown.";
}

export function medianAtFloor(): string {
  return "Half of the tokens or more stand at the shortest duration the aligner can give, so the median is not known.";
}

export function boundByFloor(): string {
  return "Short tokens that stand at the shortest duration the aligner can give may have been shorter still: the true ratio is at least the one given.";
}

export function fewTokens(side: string, tokens: number, wanted: number): string {
  return `Only ${tokens} ${side} token${tokens === 1 ? "" : "s"} where ${wanted} are wanted: the interval is only approximate.`;
}

/** The same for every row that it holds for, so that it is said once. */
export function fewVowels(wanted: number): string {
  return `Fewer than ${wanted} vowels: too few to say how often; the interval alone says what they allow.`;
}

/** What stands in the place of a rate where a text rule wrote the marks. */
export function predictedShareText(share: number): string {
  return `predicted by rule: ${(100 * share).toFixed(1)} %`;
}

export function differenceMethod(
  method: "one-speaker" | "clustered" | "lone-speaker",
  speakers: number,
): string {
  if (method === "lone-speaker")
    return "difference of shares of tokens; one speaker alone makes up one of the two, so that nothing tells how far speakers differ: the interval is open";
  return method === "clustered"
    ? `difference of shares of tokens, each speaker set against itself; interval clustered by ${speakers} speakers (t), not narrower than for independent tokens`
    : "difference of shares of tokens (Newcombe's interval): it speaks of this speaker only, and treats the tokens as independent";
}

export function familyNote(rows: number): string {
  return `${rows} differences are looked at together; the adjusted p-values keep the share of false finds among those called different (Benjamini–Hochberg).`;
}

export function longVowelsLeftOut(): string {
  return "Long vowels, and vowels of which nothing tells the length, are left out: long ones are a case of their own and hardly ever devoiced. --length all counts them too.";
}

/** How often measured devoicing errs and how that is known; it goes with every rate of measured vowels. */
export function decisionErrorNote({ from, note, sensitivity, specificity }: DevoicingError): string {
  const share = ({ correct, of }: { correct: number; of: number }) =>
    of === 0 ? "an unknown share" : `${((100 * correct) / of).toFixed(1)} %`;
  const corrected = from === "marks" ? "Rates are corrected for that." : "Rates are not corrected for that.";
  return `Devoicing was measured from the sound. The decision finds ${share(sensitivity)} of devoiced vowels and ${share(specificity)} of voiced ones. ${note} ${corrected}`;
}

/** A name that a filter asks for and no cell has. */
export function nameUnknown(option: string, name: string, known: readonly string[]): string {
  const shown = known.slice(0, 12).join(", ");
  return `There is no ${option} "${name}" in these results. There ${known.length === 1 ? "is" : "are"}: ${shown}${known.length > 12 ? `, … (${known.length} in all)` : ""}.`;
}

export function notAVowel(selector: string): string {
  return `--vowel takes vowels (a, i, u, e, o, vowel, high-vowel, non-high-vowel), but "${selector}" names consonants. Consonants before and after a vowel are chosen by --before and --after.`;
}
