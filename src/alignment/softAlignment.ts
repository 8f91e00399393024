import { logAdd } from "./gaussians.ts";

/** A row of states that must be passed in order, each at least one frame. */
export interface Chain {
  /** Column of the score table of each state. */
  readonly column: Int32Array;
  readonly stay: Float64Array;
  readonly leave: Float64Array;
}

export interface SoftAlignment {
  /** Log likelihood over all ways through the chain within the band. */
  readonly score: number;
  /** Lowest state of each frame's band. */
  readonly low: Int32Array;
  readonly width: number;
  /** Probability of state low[t]+j in frame t: frames × width. */
  readonly occupancy: Float32Array;
}

/**
 * Forward–backward pass in the log domain over a chain, limited to `reach` states on either side of a known path
 * (a chain state for each frame, never falling and rising by at most one).
 *
 * `scale` multiplies the frames' scores (frames × columns). Neighbouring frames tell much the same, so that their
 * plain product is far too sure of itself; 1 gives the plain model.
 */
export function softAlign(
  chain: Chain,
  path: Int32Array,
  reach: number,
  scores: Float32Array,
  columns: number,
  scale = 1,
): SoftAlignment {
  const frames = path.length;
  const states = chain.column.length;
  const width = Math.min(states, 2 * reach + 1);
  const low = new Int32Array(frames);
  for (let t = 0; t < frames; t++) low[t] = Math.max(0, Math.min(states - width, path[t]! - reach));
  const forward = new Float64Array(frames * width).fill(Number.NEGATIVE_INFINITY);
  const backward = new Float64Array(frames * width).fill(Number.NEGATIVE_INFINITY);
  const { column, stay, leave } = chain;
  if (low[0] === 0) forward[0] = scale * scores[column[0]!]!;
  for (let t = 1; t < frames; t++) {
    const shift = low[t]! - low[t - 1]!;
    const row = (t - 1) * width;
    for (let j = 0; j < width; j++) {
      const s = low[t]! + j;
      const i = j + shift;
      let sum = i < width ? forward[row + i]! + stay[s]! : Number.NEGATIVE_INFINITY;
      if (i - 1 >= 0 && i - 1 < width && s > 0) sum = logAdd(sum, forward[row + i - 1]! + leave[s - 1]!);
      forward[t * width + j] = sum + scale * scores[t * columns + column[s]!]!;
    }
  }
  const last = frames - 1;
  backward[last * width + (states - 1 - low[last]!)] = leave[states - 1]!;
  const score = forward[last * width + (states - 1 - low[last]!)]! + leave[states - 1]!;
  for (let t = last - 1; t >= 0; t--) {
    const shift = low[t + 1]! - low[t]!;
    const row = (t + 1) * width;
    for (let j = 0; j < width; j++) {
      const s = low[t]! + j;
      const i = j - shift;
      let sum = Number.NEGATIVE_INFINITY;
      if (i >= 0 && i < width)
        sum = backward[row + i]! + stay[s]! + scale * scores[(t + 1) * columns + column[s]!]!;
      if (i + 1 >= 0 && i + 1 < width && s + 1 < states)
        sum = logAdd(
          sum,
          backward[row + i + 1]! + leave[s]! + scale * scores[(t + 1) * columns + column[s + 1]!]!,
        );
      backward[t * width + j] = sum;
    }
  }
  const occupancy = new Float32Array(frames * width);
  for (let i = 0; i < occupancy.length; i++) occupancy[i] = Math.exp(forward[i]! + backward[i]! - score);
  return { score, low, width, occupancy };
}
