import { column, type Features, fineSteps, staticDims } from "./features.ts";

/** Least difference in level between the sides of an edge, in nats of power: 10 dB. */
const leastStep = 2.3;
/** How far an edge may move, in frames. */
const reach = 2.5;

function fineAt({ values }: Features, step: number): number {
  const frame = Math.floor(step / fineSteps);
  return values[frame * staticDims + column.fine + (step - frame * fineSteps)]!;
}

function meanLevel(features: Features, from: number, to: number): number | null {
  const first = Math.max(0, Math.ceil(from * fineSteps));
  const last = Math.min(features.frames * fineSteps, Math.floor(to * fineSteps));
  if (last - first < 3) return null;
  let sum = 0;
  for (let step = first; step < last; step++) sum += fineAt(features, step);
  return sum / (last - first);
}

/**
 * Where energy passes the middle between the levels on either side of an edge at `at`, all in frames; `at` itself when
 * the sides differ by less than 10 dB or no crossing lies within 25 ms. The sides are looked at within `left` and
 * `right` frames. A model hears a loud sound up to 20 ms early, because its windows and slopes reach into it.
 */
export function sharpenEdge(features: Features, at: number, left: number, right: number): number {
  const before = meanLevel(features, at - Math.min(5, left), at - 1);
  const after = meanLevel(features, at + 1, at + Math.min(5, right));
  if (before === null || after === null || Math.abs(after - before) < leastStep) return at;
  const rising = after > before;
  const middle = (before + after) / 2;
  const from = Math.max(1, Math.ceil((at - Math.min(reach, left)) * fineSteps));
  const to = Math.min(features.frames * fineSteps - 1, Math.floor((at + Math.min(reach, right)) * fineSteps));
  let best = at;
  let distance = Number.POSITIVE_INFINITY;
  for (let step = from; step <= to; step++) {
    const [a, b] = [fineAt(features, step - 1), fineAt(features, step)];
    if (rising ? a >= middle || b < middle : a < middle || b >= middle) continue;
    // Values stand for the middles of their steps.
    const crossing = (step - 0.5 + (middle - a) / (b - a)) / fineSteps;
    if (Math.abs(crossing - at) >= distance) continue;
    distance = Math.abs(crossing - at);
    best = crossing;
  }
  return best;
}
