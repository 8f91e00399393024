import { chainOf } from "./chain.ts";
import { scoreMixtures } from "./gaussians.ts";
import { type AcousticModel, scoringOf } from "./model.ts";
import type { Network } from "./network.ts";
import { softAlign } from "./softAlignment.ts";
import { viterbi } from "./viterbi.ts";

/** The seed knows other voices: its scores count little, so that the first guess stays soft. */
const scale = 0.04;
const reach = 20;

/**
 * A first guess by a model of other speech; calls `visit` as `flatStart` does. Only where the seed hears the sounds is
 * taken over, not how they sound in it. False when the recording is too short or the seed lacks a sound.
 */
export function seededStart(
  seed: AcousticModel,
  network: Network,
  x: Float32Array,
  visit: (frame: number, state: number, probability: number) => void,
): boolean {
  const scoring = scoringOf(network, seed.inventory, seed.frames);
  if (scoring === null) return false;
  const frames = x.length / seed.bank.dims;
  const columns = scoring.wanted.length;
  const scores = new Float32Array(frames * columns);
  scoreMixtures(seed.bank, x, scoring.wanted, scores);
  const { states: path } = viterbi(network, scoring.transitions, scores, columns, frames);
  if (path[0]! < 0) return false;
  const chain = chainOf(path, scoring.transitions);
  const soft = softAlign(chain, chain.path, reach, scores, columns, scale);
  for (let t = 0; t < frames; t++) {
    for (let j = 0; j < soft.width; j++) {
      const probability = soft.occupancy[t * soft.width + j]!;
      if (probability > 0.005) visit(t, chain.states[soft.low[t]! + j]!, probability);
    }
  }
  return true;
}
