import type { Interval } from "../alignment/interval.ts";
import type { Basis } from "../basis.ts";
import { isDevoiceable, position } from "../phonology/environment.ts";
import type { TokenRow } from "./columns.ts";
import { type Phrase, phrasesOf } from "./phrases.ts";

/** What all tokens of one utterance and label set share. */
export interface TokenContext {
  readonly dataset: string;
  readonly labelSet: string;
  readonly speaker: string;
  readonly utterance: string;
  readonly timeBasis: Basis;
  /** Shortest duration the aligner can give, in ms; null when there is none. */
  readonly timeFloorMs: number | null;
  readonly devoicingBasis: Basis | null;
  /** Word by mora of the utterance; null where unknown. */
  readonly wordOfMora: readonly (string | null)[] | null;
}

/** Times are kept to 100 ns; a duration this close to the floor stands at it. */
const floorToleranceMs = 0.01;

/** One token a vowel or consonant, with its environment; pauses give none. */
export function toTokens(intervals: readonly Interval[], context: TokenContext): TokenRow[] {
  const tokens: TokenRow[] = [];
  const devoiceable = intervals.map((_, i) => isDevoiceableAt(intervals, i));
  for (const phrase of phrasesOf(intervals))
    for (let i = phrase.from; i < phrase.to; i++)
      tokens.push(token(intervals, devoiceable, i, phrase, context));
  return tokens;
}

function token(
  intervals: readonly Interval[],
  devoiceable: readonly boolean[],
  i: number,
  phrase: Phrase,
  context: TokenContext,
): TokenRow {
  const interval = intervals[i]!;
  const mora = interval.mora!;
  const durationMs = interval.endMs - interval.startMs;
  return {
    dataset: context.dataset,
    labelSet: context.labelSet,
    speaker: context.speaker,
    utterance: context.utterance,
    index: i,
    phone: interval.phone,
    kind: interval.kind,
    length: interval.length,
    before: intervals[i - 1]?.phone ?? "pause",
    after: phoneAfter(intervals[i + 1]),
    position: position(mora - phrase.firstMora, phrase.morae),
    accented: interval.accented,
    devoiceableNeighbour:
      interval.kind === "vowel" ? neighbourIsDevoiceable(intervals, devoiceable, i, phrase) : null,
    word: context.wordOfMora?.[mora] ?? null,
    startMs: interval.startMs,
    endMs: interval.endMs,
    timeBasis: context.timeBasis,
    durationMs,
    atFloor:
      interval.atFloor ??
      (context.timeFloorMs !== null && durationMs <= context.timeFloorMs + floorToleranceMs),
    confidence: interval.confidence,
    closureMs: interval.closureEndMs === null ? null : interval.closureEndMs - interval.startMs,
    phraseMorae: phrase.morae,
    moraInPhrase: mora - phrase.firstMora + 1,
    speechRateMoraePerSec: phrase.speechRateMoraePerSec,
    devoicedByAligner: interval.alignerDevoiced,
    devoiced: context.devoicingBasis === null ? null : interval.devoiced,
    devoicedBasis:
      context.devoicingBasis === null || interval.devoiced === null ? null : context.devoicingBasis,
  };
}

/** A geminate begins with its closure: what stands before it is followed by `cl`. */
function phoneAfter(next: Interval | undefined): string {
  if (next === undefined) return "pause";
  return next.length === "geminate" ? "cl" : next.phone;
}

function isDevoiceableAt(intervals: readonly Interval[], i: number): boolean {
  const interval = intervals[i]!;
  if (interval.kind !== "vowel" || interval.length === "long") return false;
  return isDevoiceable(intervals[i - 1]?.phone ?? "pause", interval.phone, phoneAfter(intervals[i + 1]));
}

/** Looks at the nearest vowel on each side inside the phrase, when it belongs to the mora next door. */
function neighbourIsDevoiceable(
  intervals: readonly Interval[],
  devoiceable: readonly boolean[],
  i: number,
  phrase: Phrase,
): boolean {
  const mora = intervals[i]!.mora!;
  const lastMora = mora + (intervals[i]!.length === "long" ? 1 : 0);
  for (let j = i - 1; j >= phrase.from && intervals[j]!.mora! >= mora - 1; j--)
    if (devoiceable[j]) return true;
  for (let j = i + 1; j < phrase.to && intervals[j]!.mora! <= lastMora + 1; j++)
    if (devoiceable[j]) return true;
  return false;
}
