import type { Network } from "./network.ts";

/** Log probabilities that a network needs beside the frames' scores. */
export interface Transitions {
  /** Column of the score table of each state. */
  readonly column: Int32Array;
  /** Log probability to stay, and to leave. */
  readonly stay: Float64Array;
  readonly leave: Float64Array;
}

export interface Path {
  /** State of each frame. */
  readonly states: Int32Array;
  /** Log likelihood of the path, −∞ when the recording is too short for the network. */
  readonly score: number;
}

/**
 * Best path through the network. `scores` is frames × columns, row-major. Equal ways: the earlier state wins.
 * At most 32,767 states. Memory: two bytes a frame and state.
 */
export function viterbi(
  network: Network,
  transitions: Transitions,
  scores: Float32Array,
  columns: number,
  frames: number,
): Path {
  const { states, arcStart, arcs, entry, final } = network;
  const { column, stay, leave } = transitions;
  let previous = new Float64Array(states).fill(Number.NEGATIVE_INFINITY);
  let current = new Float64Array(states);
  const back = new Int16Array(frames * states);
  for (let s = 0; s < states; s++) if (entry[s]) previous[s] = scores[column[s]!]!;
  for (let t = 1; t < frames; t++) {
    const row = t * columns;
    const backRow = t * states;
    for (let s = 0; s < states; s++) {
      let best = previous[s]! + stay[s]!;
      let from = s;
      const end = arcStart[s + 1]!;
      for (let i = arcStart[s]!; i < end; i++) {
        const p = arcs[i]!;
        const score = previous[p]! + leave[p]!;
        if (score > best) {
          best = score;
          from = p;
        }
      }
      current[s] = best + scores[row + column[s]!]!;
      back[backRow + s] = from;
    }
    [previous, current] = [current, previous];
  }
  let score = Number.NEGATIVE_INFINITY;
  let at = -1;
  for (let s = 0; s < states; s++) {
    if (final[s] && previous[s]! + leave[s]! > score) {
      score = previous[s]! + leave[s]!;
      at = s;
    }
  }
  const path = new Int32Array(frames).fill(-1);
  if (at < 0) return { states: path, score };
  for (let t = frames - 1; t >= 0; t--) {
    path[t] = at;
    at = back[t * states + at]!;
  }
  return { states: path, score };
}
