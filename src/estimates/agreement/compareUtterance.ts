import { type BoundaryError, boundaryErrors } from "../../alignment/boundaryErrors.ts";
import { isPause } from "../../phonology/phones.ts";
import type { ComparedUtterance, OwnInterval } from "./comparedUtterance.ts";
import { type EqualRun, matchSequences } from "./matchSequences.ts";
import { ownSpans, referenceSpans, type SoundSpan, spokenPlaces } from "./soundSpans.ts";

/** An interval of the results and the stretch that the reference gives to the same sound. */
export interface IntervalPair {
  readonly own: OwnInterval;
  /** Sounds beside it in the results; a pause at the edges. */
  readonly before: string;
  readonly after: string;
  readonly referenceMs: number;
  /** Mark of the reference; null where its label set has none. */
  readonly referenceDevoiced: boolean | null;
}

/** A stretch whose sounds differ; it is in no figure. */
export interface PhoneDifference {
  readonly utterance: string;
  /** Where the reference has it, ms. */
  readonly atMs: number;
  /** Phones joined by blanks; empty where one side has none. */
  readonly own: string;
  readonly reference: string;
}

export interface UtteranceComparison {
  readonly errors: readonly BoundaryError[];
  readonly pairs: readonly IntervalPair[];
  readonly differences: readonly PhoneDifference[];
  /** Sounds on both sides, and how many of them are the same. */
  readonly phones: { readonly own: number; readonly reference: number; readonly same: number };
  /** Pauses inside the speech that both sides have, or only one. */
  readonly pauses: { readonly both: number; readonly onlyOwn: number; readonly onlyReference: number };
}

/**
 * Compares one recording sound by sound. Where sounds differ the stretch is left out and listed; boundaries are
 * compared between sounds that are the same on both sides, and between such a sound and a pause.
 */
export function compareUtterance({ utterance, own, reference }: ComparedUtterance): UtteranceComparison {
  const [mine, theirs] = [ownSpans(own), referenceSpans(reference)];
  const [mineSpoken, theirsSpoken] = [spokenPlaces(mine), spokenPlaces(theirs)];
  const { runs, differences } = matchSequences(
    mineSpoken.map((place) => mine[place]!.phone),
    theirsSpoken.map((place) => theirs[place]!.phone),
  );
  const stretches = runs.map((run) => ({
    mine: stretch(mine, mineSpoken, run.own, run),
    theirs: stretch(theirs, theirsSpoken, run.reference, run),
  }));
  return {
    errors: stretches.flatMap((both) => errorsOf(both.mine, both.theirs)),
    pairs: stretches.flatMap((both) => pairsOf(both.mine, both.theirs, own)),
    differences: differences.map(({ ownFrom, ownTo, referenceFrom, referenceTo }) => ({
      utterance,
      atMs: theirs[theirsSpoken[referenceFrom] ?? -1]?.startMs ?? theirs.at(-1)?.endMs ?? 0,
      own: phonesOf(mine, mineSpoken.slice(ownFrom, ownTo)),
      reference: phonesOf(theirs, theirsSpoken.slice(referenceFrom, referenceTo)),
    })),
    phones: {
      own: mineSpoken.length,
      reference: theirsSpoken.length,
      same: runs.reduce((sum, { length }) => sum + length, 0),
    },
    pauses: sumPauses(stretches),
  };
}

/** The spans of a run with its pauses, those just before and after it included. */
function stretch(spans: readonly SoundSpan[], spoken: readonly number[], from: number, { length }: EqualRun) {
  const first = spoken[from]!;
  const last = spoken[from + length - 1]!;
  const beside = (place: number) => spans[place] !== undefined && isPause(spans[place].phone);
  return spans.slice(first - (beside(first - 1) ? 1 : 0), last + (beside(last + 1) ? 2 : 1));
}

/** Where the reference marks no vowel, the class of a boundary goes by what was heard. */
function errorsOf(mine: readonly SoundSpan[], theirs: readonly SoundSpan[]): BoundaryError[] {
  const heard = sounds(mine);
  let at = 0;
  const marked = theirs.map((span) => {
    const own = isPause(span.phone) ? undefined : heard[at++];
    return { ...span, devoiced: span.devoiced ?? own?.devoiced ?? false };
  });
  const aligned = mine.map(({ phone, devoiced, startMs, endMs }) => ({
    ...{ phone, startMs, endMs, long: false, source: -1, confidence: 1, atFloor: false },
    variant: devoiced === true ? ("devoiced" as const) : ("plain" as const),
  }));
  return boundaryErrors(aligned, marked) ?? [];
}

/** Intervals whose first and last part both lie in the stretch and share their span with no other interval. */
function pairsOf(
  mine: readonly SoundSpan[],
  theirs: readonly SoundSpan[],
  intervals: readonly OwnInterval[],
): IntervalPair[] {
  const [heard, given] = [sounds(mine), sounds(theirs)];
  const pairs: IntervalPair[] = [];
  for (let k = 0; k < heard.length; k++) {
    const place = heard[k]!.from[0]!;
    const own = intervals[place]!;
    const parts = own.closureEndMs === null ? 1 : 2;
    const alone = heard[k]!.from.length === 1 && heard[k + parts - 1]?.from[0] === place;
    const isFirst = own.closureEndMs === null || heard[k]!.phone === "cl";
    if (!alone || !isFirst || heard[k + parts - 1]!.from.length !== 1) continue;
    pairs.push({
      own,
      before: intervals[place - 1]?.phone ?? "pause",
      after: intervals[place + 1]?.phone ?? "pause",
      referenceMs: given[k + parts - 1]!.endMs - given[k]!.startMs,
      referenceDevoiced: given[k]!.devoiced,
    });
    k += parts - 1;
  }
  return pairs;
}

function sounds(spans: readonly SoundSpan[]): SoundSpan[] {
  return spans.filter(({ phone }) => !isPause(phone));
}

function sumPauses(
  stretches: readonly { readonly mine: readonly SoundSpan[]; readonly theirs: readonly SoundSpan[] }[],
): UtteranceComparison["pauses"] {
  const sum = { both: 0, onlyOwn: 0, onlyReference: 0 };
  for (const { mine, theirs } of stretches) {
    const [own, reference] = [pausesInside(mine), pausesInside(theirs)];
    for (const gap of own) sum[reference.has(gap) ? "both" : "onlyOwn"]++;
    for (const gap of reference) if (!own.has(gap)) sum.onlyReference++;
  }
  return sum;
}

/** After how many sounds of the stretch a pause stands, its edges left out. */
function pausesInside(spans: readonly SoundSpan[]): Set<number> {
  const gaps = new Set<number>();
  let said = 0;
  for (const { phone } of spans)
    if (isPause(phone)) gaps.add(said);
    else said++;
  gaps.delete(0);
  gaps.delete(said);
  return gaps;
}

function phonesOf(spans: readonly SoundSpan[], places: readonly number[]): string {
  return places.map((place) => spans[place]!.phone).join(" ");
}
