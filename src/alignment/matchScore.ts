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

/** Every second frame is looked at: neighbours tell the same. */
const step = 2;
const worstFrames = 300 / (step * hopMs);

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
  const { dims } = model.bank;
  const anySpeech = speech.includes(1);
  const at: number[] = [];
  for (let t = 0; t < frameScores.length; t += step) if (!anySpeech || speech[t] === 1) at.push(t);
  const rows = new Float32Array(at.length * dims);
  at.forEach((t, i) => {
    rows.set(x.subarray(t * dims, (t + 1) * dims), i * dims);
  });
  const mixtures = Int32Array.from({ length: model.inventory.states }, (_, m) => m);
  const scores = new Float32Array(at.length * mixtures.length);
  scoreMixtures(model.bank, rows, mixtures, scores);
  const gaps = at.map((t, i) => {
    let best = Number.NEGATIVE_INFINITY;
    for (let j = i * mixtures.length; j < (i + 1) * mixtures.length; j++) best = Math.max(best, scores[j]!);
    return best - frameScores[t]!;
  });
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
      endMs: (at[worstEnd]! + step) * hopMs,
      gap: worst / width,
    },
  };
}
