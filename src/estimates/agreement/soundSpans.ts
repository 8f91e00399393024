import { isPause, type Phone } from "../../phonology/phones.ts";
import type { OwnInterval, ReferenceLabel } from "./comparedUtterance.ts";

/** Equal phones in a row as one: between them nobody can place a boundary. */
export interface SoundSpan {
  readonly phone: Phone;
  readonly startMs: number;
  readonly endMs: number;
  readonly devoiced: boolean | null;
  /** What it was joined from: places in the list that was given, in order. */
  readonly from: readonly number[];
}

interface Part {
  readonly phone: Phone;
  readonly startMs: number;
  readonly endMs: number;
  readonly devoiced: boolean | null;
  readonly place: number;
}

/** Intervals of the results, with geminates parted into their closure and the consonant, as label files write them. */
export function ownSpans(intervals: readonly OwnInterval[]): SoundSpan[] {
  return join(
    intervals.flatMap(({ phone, startMs, endMs, closureEndMs, devoicedHeard }, place) =>
      closureEndMs === null
        ? [{ phone, startMs, endMs, devoiced: devoicedHeard, place }]
        : [
            { phone: "cl" as const, startMs, endMs: closureEndMs, devoiced: null, place },
            { phone, startMs: closureEndMs, endMs, devoiced: null, place },
          ],
    ),
  );
}

export function referenceSpans(labels: readonly ReferenceLabel[]): SoundSpan[] {
  return join(labels.map((label, place) => ({ ...label, place })));
}

/** Places of the spans that are sounds, not pauses. */
export function spokenPlaces(spans: readonly SoundSpan[]): number[] {
  return spans.flatMap(({ phone }, place) => (isPause(phone) ? [] : [place]));
}

function join(parts: readonly Part[]): SoundSpan[] {
  const spans: SoundSpan[] = [];
  for (const { place, ...part } of parts) {
    const last = spans.at(-1);
    if (last?.phone === part.phone)
      spans[spans.length - 1] = { ...last, endMs: part.endMs, from: [...last.from, place] };
    else spans.push({ ...part, from: [place] });
  }
  return spans;
}
