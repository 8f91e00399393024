import type { AlignedPhone, Alignment } from "./alignUtterance.ts";
import { type BoundaryError, boundaryErrors, type ReferencePhone, soundKind } from "./boundaryErrors.ts";

/** Constant offsets in ms of our boundaries from hand-placed ones, by the kinds of sound on either side. */
export interface BoundaryCalibration {
  /** Hand-labelled boundaries that it rests on. */
  readonly boundaries: number;
  /** `left>right` of `soundKind`; kinds that were never seen fall back to `>right`, then to `>`. */
  readonly offsetsMs: Readonly<Record<string, number>>;
}

/** A group's own median counts as much as this many boundaries of the group above it. */
const prior = 5;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const n = sorted.length;
  return n === 0 ? 0 : (sorted[(n - 1) >> 1]! + sorted[n >> 1]!) / 2;
}

function groupBy(errors: readonly BoundaryError[], key: (error: BoundaryError) => string) {
  const groups = new Map<string, number[]>();
  for (const error of errors) groups.set(key(error), [...(groups.get(key(error)) ?? []), error.errorMs]);
  return groups;
}

/**
 * Learns constant offsets from utterances that are aligned and labelled by hand. A minute of speech is enough to tell
 * the common kinds of boundary; rarer kinds are drawn towards the mean of their right-hand sound, then of all.
 */
export function calibrateBoundaries(
  labelled: readonly { readonly alignment: Alignment; readonly labels: readonly ReferencePhone[] }[],
): BoundaryCalibration {
  const errors = labelled.flatMap(({ alignment, labels }) => boundaryErrors(alignment.phones, labels) ?? []);
  const offsetsMs: Record<string, number> = { ">": median(errors.map(({ errorMs }) => errorMs)) };
  const shrink = (values: readonly number[], towards: number) =>
    (values.length * median(values) + prior * towards) / (values.length + prior);
  for (const [right, values] of groupBy(errors, ({ ownRight }) => `>${ownRight}`))
    offsetsMs[right] = shrink(values, offsetsMs[">"]!);
  for (const [pair, values] of groupBy(errors, ({ ownLeft, ownRight }) => `${ownLeft}>${ownRight}`))
    offsetsMs[pair] = shrink(values, offsetsMs[pair.slice(pair.indexOf(">"))]!);
  return { boundaries: errors.length, offsetsMs };
}

/** Shortest phone that a calibrated boundary may leave, ms. */
const leastMs = 5;

/** The alignment with each inner boundary moved by its kind's offset; order is kept. */
export function applyCalibration(alignment: Alignment, { offsetsMs }: BoundaryCalibration): Alignment {
  const { phones } = alignment;
  const starts = phones.map((phone, i) => {
    const before = phones[i - 1];
    return before ? phone.startMs - offsetBetween(before, phone, offsetsMs) : phone.startMs;
  });
  for (let i = 1; i < starts.length; i++) starts[i] = Math.max(starts[i]!, starts[i - 1]! + leastMs);
  const endMs = phones.at(-1)?.endMs ?? 0;
  for (let i = starts.length - 1; i > 0; i--)
    starts[i] = Math.min(starts[i]!, (i + 1 < starts.length ? starts[i + 1]! : endMs) - leastMs);
  return {
    ...alignment,
    phones: phones.map((phone, i) => ({ ...phone, startMs: starts[i]!, endMs: starts[i + 1] ?? endMs })),
  };
}

function offsetBetween(
  left: AlignedPhone,
  right: AlignedPhone,
  offsetsMs: BoundaryCalibration["offsetsMs"],
): number {
  const after = soundKind(right.phone, right.variant === "devoiced", "right");
  const pair = `${soundKind(left.phone, left.variant === "devoiced", "left")}>${after}`;
  return offsetsMs[pair] ?? offsetsMs[`>${after}`] ?? offsetsMs[">"] ?? 0;
}
