import type { MixtureBank } from "./gaussians.ts";
import { type Inventory, modelState } from "./inventory.ts";
import type { Network } from "./network.ts";
import type { Unit } from "./topology.ts";
import type { Transitions } from "./viterbi.ts";

/** What training leaves behind: how each state sounds and how long it lasts. */
export interface AcousticModel {
  readonly inventory: Inventory;
  readonly bank: MixtureBank;
  /** Mean length of each state in frames. */
  readonly frames: Float64Array;
  /** Mean length in frames of the closure of stops and affricates after a voiced sound, where it can be heard. */
  readonly closureFrames: ReadonlyMap<Unit, number>;
}

/** What a decoder needs to run a network under a model. */
export interface Scoring {
  /** Model states that occur, each once: the columns of the score table. */
  readonly wanted: Int32Array;
  readonly transitions: Transitions;
}

/**
 * Columns and transition probabilities of a network; null when a unit has neither states nor a stand-in.
 * A state of mean length n frames is left with probability 1/n.
 */
export function scoringOf(network: Network, inventory: Inventory, frames: Float64Array): Scoring | null {
  const columnOf = new Map<number, number>();
  const column = new Int32Array(network.states);
  const stay = new Float64Array(network.states);
  const leave = new Float64Array(network.states);
  for (let s = 0; s < network.states; s++) {
    const state = modelState(inventory, network.units[network.unit[s]!]!, network.position[s]!);
    if (state === null) return null;
    let c = columnOf.get(state);
    if (c === undefined) {
      c = columnOf.size;
      columnOf.set(state, c);
    }
    column[s] = c;
    const mean = Math.max(1.05, frames[state]!);
    stay[s] = Math.log(1 - 1 / mean);
    leave[s] = -Math.log(mean);
  }
  return { wanted: Int32Array.from(columnOf.keys()), transitions: { column, stay, leave } };
}
