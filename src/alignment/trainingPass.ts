import { chainOf } from "./chain.ts";
import { type MixtureBank, scoreMixtures } from "./gaussians.ts";
import { type Inventory, modelState } from "./inventory.ts";
import { scoringOf } from "./model.ts";
import type { Network } from "./network.ts";
import { softAlign } from "./softAlignment.ts";
import { addToMixture, createStatistics, type Statistics } from "./statistics.ts";
import { viterbi } from "./viterbi.ts";

/** An utterance as training sees it. */
export interface Prepared {
  readonly network: Network;
  /** Observations, frames × dims. */
  readonly x: Float32Array;
  readonly frames: number;
}

/** What one pass over the speech collects. */
export interface Collected {
  readonly statistics: Statistics;
  /** Frames and passages of each model state. */
  readonly occupancy: Float64Array;
  readonly visits: Float64Array;
  /** Log likelihood of the best paths, and frames, of the utterances that could be aligned. */
  readonly logLikelihood: number;
  readonly heard: number;
  /** Utterances too short for their phones. */
  readonly skipped: number;
}

/** Frames' scores count this much in re-estimation; see `softAlign`. Between .1 and 1 nothing else changes much. */
const scale = 0.3;
/** Places a chain may drift from the best path. */
const reach = 8;

export function emptyCollection(inventory: Inventory, components: number, dims: number) {
  return {
    statistics: createStatistics(components, dims),
    occupancy: new Float64Array(inventory.states),
    visits: new Float64Array(inventory.states),
  };
}

/**
 * One pass of re-estimation: the best path through each utterance chooses variants and pauses, a forward–backward
 * pass along it shares the frames among its states.
 */
export function trainingPass(
  corpus: readonly Prepared[],
  inventory: Inventory,
  bank: MixtureBank,
  frames: Float64Array,
): Collected {
  const collected = emptyCollection(inventory, bank.c.length, bank.dims);
  const { statistics, occupancy, visits } = collected;
  let logLikelihood = 0;
  let heard = 0;
  let skipped = 0;
  for (const utterance of corpus) {
    const scoring = scoringOf(utterance.network, inventory, frames);
    if (scoring === null) throw new Error("the inventory was taken from other utterances than these");
    const columns = scoring.wanted.length;
    const scores = new Float32Array(utterance.frames * columns);
    scoreMixtures(bank, utterance.x, scoring.wanted, scores);
    const best = viterbi(utterance.network, scoring.transitions, scores, columns, utterance.frames);
    if (!Number.isFinite(best.score)) {
      skipped++;
      continue;
    }
    logLikelihood += best.score;
    heard += utterance.frames;
    const chain = chainOf(best.states, scoring.transitions);
    for (const c of chain.column) visits[scoring.wanted[c]!]!++;
    const soft = softAlign(chain, chain.path, reach, scores, columns, scale);
    for (let t = 0; t < utterance.frames; t++) {
      for (let j = 0; j < soft.width; j++) {
        const weight = soft.occupancy[t * soft.width + j]!;
        if (weight < 0.01) continue;
        const state = scoring.wanted[chain.column[soft.low[t]! + j]!]!;
        occupancy[state]! += weight;
        addToMixture(statistics, bank, state, weight, utterance.x, t * bank.dims);
      }
    }
  }
  return { ...collected, logLikelihood, heard, skipped };
}

/** Model state of a state of a network whose units are all in the inventory. */
export function knownState(inventory: Inventory, network: Network, state: number): number {
  return modelState(inventory, network.units[network.unit[state]!]!, network.position[state]!)!;
}
