import { safeTokens } from "../../estimates/ratioCore.ts";
import type { RatioRow } from "../../estimates/ratios.ts";
import { interfaceText } from "../../interface/interfaceText.ts";
import { retold } from "../../interface/retold.ts";
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

const words = () => interfaceText().sentences.ratios;

/** `2.40 times`, or `at least 2.40 times` where short sounds stand at the aligner's floor. */
export function times({ bound }: { readonly bound: "at least" | null }, ratio: number): string {
  return words().times(formatRatio(ratio), bound !== null);
}

/** `95 % interval 2.20 to 2.60`. */
export function ratioRange(row: Pick<Estimated, "low" | "high" | "level">): string {
  return `${intervalName(row.level)} ${interfaceText().format.range(formatRatio(row.low), formatRatio(row.high))}`;
}

/** What one ratio says. A lower bound is called one, and one speaker never stands for others. */
export function ratioSentence(row: RatioRow): string {
  const { contrast } = row;
  if (!isEstimated(row)) return words().none(contrast, retold(row.warnings[0] ?? ""));
  const who = row.scope === "one speaker" ? null : formatAmount(row.speakers, "speaker");
  const [long, short] = [row.long, row.short].map(({ tokens }) => formatAmount(tokens, "token"));
  return words().one(contrast, times(row, row.estimate), ratioRange(row), who, long!, short!);
}

/** Whether a ratio rests on enough tokens of both sides to be ranked among others. */
export function isFirm({ estimate, long, short }: RatioRow): boolean {
  return estimate !== null && long.tokens >= safeTokens && short.tokens >= safeTokens;
}

function ending(top: Estimated, bottom: Estimated): string {
  if (bottom.bound !== null) return words().lowerBounds;
  return top.low > bottom.high ? "" : words().overlap;
}

/**
 * Which ratio is largest and which smallest, and whether the corpus tells them apart. Only ratios that rest on enough
 * tokens are ranked, and a sound that one speaker alone shows is not ranked among those of several.
 */
export function compareRatios(rows: readonly NamedRatio[]): string {
  const [only] = rows;
  if (only === undefined) return interfaceText().sentences.nothing;
  if (rows.length === 1)
    return isEstimated(only.row) && !isFirm(only.row)
      ? words().tooFew(only.row.contrast, safeTokens)
      : ratioSentence(only.row);
  const widest = mostSpeakers(rows);
  const ranked = rows
    .filter((item): item is { name: string; row: Estimated } => isEstimated(item.row) && isFirm(item.row))
    .filter(({ row }) => row.scope === widest.scope)
    .sort((a, b) => b.row.estimate - a.row.estimate);
  const top = ranked[0];
  const bottom = ranked.at(-1);
  if (top === undefined || bottom === undefined) return words().tooFew(only.row.contrast, safeTokens);
  if (top === bottom) return words().of(top.name, ratioSentence(top.row));
  const alone = widest.scope === "one speaker";
  const [least, most] = [bottom, top].map(({ name, row }) =>
    words().end(name, times(row, row.estimate), ratioRange(row)),
  );
  return `${words().span(top.row.contrast, alone, least!, most!)}${ending(top.row, bottom.row)}`;
}

/** How the durations behind ratios came about, for the lines under a picture. */
export function ratioBasis(rows: readonly NamedRatio[]): Basis {
  const [first] = rows;
  if (first === undefined) return { counts: "", method: null, warnings: [] };
  const long = rows.reduce((sum, { row }) => sum + row.long.tokens, 0);
  const short = rows.reduce((sum, { row }) => sum + row.short.tokens, 0);
  const say = words();
  const widest = mostSpeakers(rows);
  return {
    counts: say.counts(
      ...([first.row.contrast, formatAmount(long, "token"), formatAmount(short, "token")] as const),
      ...([formatAmount(widest.speakers, "speaker"), say.how[first.row.basis]] as const),
    ),
    method: say.method(retold(widest.method)),
    warnings: groupWarnings(rows),
  };
}

/** Typical durations of the two sides of one row, in a sentence. */
export function durationsSentence({ contrast, long, short }: RatioRow): string {
  const means = [formatMs(long.geometricMeanMs), formatMs(short.geometricMeanMs)] as const;
  return words().durations(contrast, ...means, short.atFloorShare >= 0.005);
}

/** How far speakers' own ratios lie apart, and the ratio over all of them. */
export function speakerRatiosSentence(ratios: readonly number[], overall: RatioRow): string {
  const over = isEstimated(overall)
    ? words().overAll(times(overall, overall.estimate), ratioRange(overall))
    : "";
  return words().speakers(
    formatAmount(ratios.length, "speaker"),
    formatRatio(Math.min(...ratios)),
    formatRatio(Math.max(...ratios)),
    overall.bound !== null,
    over,
  );
}
