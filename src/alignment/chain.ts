import type { Chain } from "./softAlignment.ts";
import type { Transitions } from "./viterbi.ts";

/** The states that a path visits, in order, and the path told in places of that chain. */
export interface ChainOnPath extends Chain {
  /** Network state of each place. */
  readonly states: Int32Array;
  readonly path: Int32Array;
}

/** Reduces a network to the states of one path through it, so that what was chosen stays chosen. */
export function chainOf(path: Int32Array, transitions: Transitions): ChainOnPath {
  const states: number[] = [];
  const places = path.map((state) => {
    if (states.at(-1) !== state) states.push(state);
    return states.length - 1;
  });
  const pick = <T extends Int32Array | Float64Array>(values: T, out: T): T => {
    states.forEach((s, i) => {
      out[i] = values[s]!;
    });
    return out;
  };
  return {
    states: Int32Array.from(states),
    path: places,
    column: pick(transitions.column, new Int32Array(states.length)),
    stay: pick(transitions.stay, new Float64Array(states.length)),
    leave: pick(transitions.leave, new Float64Array(states.length)),
  };
}
