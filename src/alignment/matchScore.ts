import { hopMs } from "./features.ts";
import { scoreMixtures } from "./gaussians.ts";
import type { AcousticModel } from "./model.ts";

/** How well a recording fits its text. Gaps are in nats a frame: 0 is a perfect fit, larger is worse. */
export interface MatchScore {
  /** Mean gap over the frames of speech. */
  readonly gap: number;
  /** The worst 300 ms of speech and its mean gap. */
  readonly worst: { readonly startMs: number; readonly endMs: number; readonly gap: number };
}

const worstFrames = 300 / hopMs;

/**
 * Gap of a frame: how much better the best of all states fits than the state that the text demands. `frameScores`
 * are the latter; `speech` is 1 outside pauses. Where the text says nothing but pauses, every frame counts.
 */
export function matchScore(
  model: AcousticModel,
  x: Float32Array,
  frameScores: Float32Array,
  speech: Uint8Array,
): MatchScore {
  const frames = frameScores.length;
  const mixtures = Int32Array.from({ length: model.inventory.states }, (_, m) => m);
  const scores = new Float32Array(frames * mixtures.length);
  scoreMixtures(model.bank, x, mixtures, scores);
  const counts = speech.includes(1) ? speech : new Uint8Array(frames).fill(1);
  const gaps: number[] = [];
  const at: number[] = [];
  for (let t = 0; t < frames; t++) {
    if (counts[t] === 0) continue;
    let best = Number.NEGATIVE_INFINITY;
    for (let i = t * mixtures.length; i < (t + 1) * mixtures.length; i++) best = Math.max(best, scores[i]!);
    gaps.push(best - frameScores[t]!);
    at.push(t);
  }
  const width = Math.min(worstFrames, gaps.length);
  let sum = 0;
  let total = 0;
  let worst = -1;
  let worstEnd = width - 1;
  gaps.forEach((gap, i) => {
    total += gap;
    sum += gap - (i >= width ? gaps[i - width]! : 0);
    if (i >= width - 1 && sum > worst) {
      worst = sum;
      worstEnd = i;
    }
  });
  return {
    gap: total / gaps.length,
    worst: {
      startMs: at[worstEnd - width + 1]! * hopMs,
      endMs: (at[worstEnd]! + 1) * hopMs,
      gap: worst / width,
    },
  };
}
