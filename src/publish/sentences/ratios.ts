import type { RatioRow } from "../../estimates/ratios.ts";
import { formatAmount, formatMs, formatRatio, intervalName } from "../format.ts";
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
  const head =
    row.scope === "one speaker"
      ? `In this one speaker, ${long}`
      : long.charAt(0).toUpperCase() + long.slice(1);
  const who = row.scope === "one speaker" ? "for this speaker only" : formatAmount(row.speakers, "speaker");
  const amounts = `${formatAmount(row.long.tokens, "token")} against ${formatAmount(row.short.tokens, "token")}`;
  return `${head} last ${times(row, row.estimate)} as long as ${short} (${range(row)}, ${who}; ${amounts}).`;
}

/** Which ratio is largest and which smallest when their intervals stay apart and neither is only a bound; else the span. */
export function compareRatios(rows: readonly NamedRatio[]): string {
  const [only] = rows;
  if (only === undefined) return "Nothing in this corpus matches the choice.";
  if (rows.length === 1) return ratioSentence(only.row);
  const estimated = rows.filter((item): item is { name: string; row: Estimated } => isEstimated(item.row));
  if (estimated.length < 2) return ratioSentence(estimated[0]?.row ?? only.row);
  const sorted = [...estimated].sort((a, b) => b.row.estimate - a.row.estimate);
  const top = sorted[0]!;
  const bottom = sorted.at(-1)!;
  const { long, short } = words[top.row.contrast];
  const head =
    top.row.scope === "one speaker"
      ? `In this one speaker, ${long}`
      : long.charAt(0).toUpperCase() + long.slice(1);
  const firm = top.row.low > bottom.row.high && bottom.row.bound === null;
  const ending = firm
    ? ""
    : bottom.row.bound !== null
      ? " Some of these are lower bounds, so their order is not certain."
      : " The intervals overlap, so this corpus does not tell them apart.";
  return `${head} last from ${times(bottom.row, bottom.row.estimate)} (${bottom.name}) to ${times(top.row, top.row.estimate)} (${top.name}) as long as ${short}.${ending}`;
}

/** How the durations behind ratios came about, for the lines under a picture. */
export function ratioBasis(rows: readonly NamedRatio[]): Basis {
  const [first] = rows;
  if (first === undefined) return { counts: "", method: null, warnings: [] };
  const long = rows.reduce((sum, { row }) => sum + row.long.tokens, 0);
  const short = rows.reduce((sum, { row }) => sum + row.short.tokens, 0);
  const how = {
    measured: "measured",
    annotated: "set by a person",
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
