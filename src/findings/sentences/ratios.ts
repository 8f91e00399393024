import { safeTokens } from "../../estimates/ratioCore.ts";
import type { RatioRow } from "../../estimates/ratios.ts";
import { capital, formatAmount, formatMs, formatRatio, intervalName } from "../format.ts";
import { type Basis, groupWarnings, mostSpeakers } from "./basis.ts";

/** A row of ratios under the name it has in the picture. */
export interface NamedRatio {
  readonly name: string;
  readonly row: RatioRow;
}

type Estimated = RatioRow & { readonly estimate: number; readonly low: number; readonly high: number };

function isEstimated(row: RatioRow): row is Estimated {
  return row.estimate !== null && row.low !== null && row.high !== null;
}

const words = {
  "vowel-length": { long: "long vowels", short: "short ones" },
  gemination: { long: "doubled consonants", short: "single ones" },
} as const;

/** `2.40 times`, or `at least 2.40 times` where short sounds stand at the aligner's floor. */
export function times({ bound }: { readonly bound: "at least" | null }, ratio: number): string {
  return `${bound === null ? "" : "at least "}${formatRatio(ratio)} times`;
}

function range(row: Estimated): string {
  return `${intervalName(row.level)} ${formatRatio(row.low)} to ${formatRatio(row.high)}`;
}

/** What one ratio says. A lower bound is called one, and one speaker never stands for others. */
export function ratioSentence(row: RatioRow): string {
  const { long, short } = words[row.contrast];
  if (!isEstimated(row))
    return `Of ${long} and ${short} no ratio can be given here. ${row.warnings[0] ?? ""}`.trim();
  const head = row.scope === "one speaker" ? `In this one speaker, ${long}` : capital(long);
  const who = row.scope === "one speaker" ? "for this speaker only" : formatAmount(row.speakers, "speaker");
  const amounts = `${formatAmount(row.long.tokens, "token")} against ${formatAmount(row.short.tokens, "token")}`;
  return `${head} last ${times(row, row.estimate)} as long as ${short} (${range(row)}, ${who}; ${amounts}).`;
}

/** Whether a ratio rests on enough tokens of both sides to be ranked among others. */
export function isFirm({ estimate, long, short }: RatioRow): boolean {
  return estimate !== null && long.tokens >= safeTokens && short.tokens >= safeTokens;
}

function ending(top: Estimated, bottom: Estimated): string {
  if (bottom.bound !== null) return " Some of these are lower bounds, so their order is not certain.";
  return top.low > bottom.high ? "" : " The intervals overlap, so this corpus does not tell them apart.";
}

/**
 * Which ratio is largest and which smallest, and whether the corpus tells them apart. Only ratios that rest on enough
 * tokens are ranked, and a sound that one speaker alone shows is not ranked among those of several.
 */
export function compareRatios(rows: readonly NamedRatio[]): string {
  const [only] = rows;
  if (only === undefined) return "Nothing in this corpus matches the choice.";
  if (rows.length === 1) return ratioSentence(only.row);
  const widest = mostSpeakers(rows);
  const ranked = rows
    .filter((item): item is { name: string; row: Estimated } => isEstimated(item.row) && isFirm(item.row))
    .filter(({ row }) => row.scope === widest.scope)
    .sort((a, b) => b.row.estimate - a.row.estimate);
  const top = ranked[0];
  const bottom = ranked.at(-1);
  if (top === undefined || bottom === undefined)
    return `Each of these rests on fewer than ${safeTokens} tokens of one side: too few to say how ${words[only.row.contrast].long} compare.`;
  if (top === bottom) return `${top.name}: ${ratioSentence(top.row)}`;
  const { long, short } = words[top.row.contrast];
  const head = widest.scope === "one speaker" ? `In this one speaker, ${long}` : capital(long);
  const [least, most] = [bottom, top].map(({ name, row }) => `${name}; ${range(row)}`);
  return `${head} last from ${times(bottom.row, bottom.row.estimate)} (${least}) to ${times(top.row, top.row.estimate)} (${most}) as long as ${short}.${ending(top.row, bottom.row)}`;
}

/** How the durations behind ratios came about, for the lines under a picture. */
export function ratioBasis(rows: readonly NamedRatio[]): Basis {
  const [first] = rows;
  if (first === undefined) return { counts: "", method: null, warnings: [] };
  const long = rows.reduce((sum, { row }) => sum + row.long.tokens, 0);
  const short = rows.reduce((sum, { row }) => sum + row.short.tokens, 0);
  const how = {
    measured: "measured",
    annotated: "set by a person, or known because the speech was made",
    aligned: "placed by an aligner",
    predicted: "predicted",
  }[first.row.basis];
  const names = words[first.row.contrast];
  const widest = mostSpeakers(rows);
  return {
    counts: `${formatAmount(long, "token")} of ${names.long}, ${formatAmount(short, "token")} of ${names.short}, ${formatAmount(widest.speakers, "speaker")}; boundaries ${how}.`,
    method: `Estimate and interval: ${widest.method}.`,
    warnings: groupWarnings(rows),
  };
}

/** Typical durations of the two sides of one row, in a sentence. */
export function durationsSentence({ contrast, long, short }: RatioRow): string {
  const names = words[contrast];
  const bound = short.atFloorShare >= 0.005 ? "at most " : "";
  return `Geometric means: ${formatMs(long.geometricMeanMs)} for ${names.long}, ${bound}${formatMs(short.geometricMeanMs)} for ${names.short}.`;
}

/** How far speakers' own ratios lie apart, and the ratio over all of them. */
export function speakerRatiosSentence(ratios: readonly number[], overall: RatioRow): string {
  const bound = overall.bound === null ? "" : "at least ";
  const span = `${bound}${formatRatio(Math.min(...ratios))} to ${formatRatio(Math.max(...ratios))} times`;
  const over = isEstimated(overall)
    ? `; over all of them ${times(overall, overall.estimate)} (${range(overall)})`
    : "";
  return `${formatAmount(ratios.length, "speaker")} range from ${span}${over}.`;
}
