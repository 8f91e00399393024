import { broadFrames, broadObservations, broadScore } from "./broadClasses.ts";
import { chainOf } from "./chain.ts";
import type { Features } from "./features.ts";
import type { Network } from "./network.ts";
import { softAlign } from "./softAlignment.ts";
import { statesOf } from "./topology.ts";
import { type Transitions, viterbi } from "./viterbi.ts";

/** Places a chain may drift from the first path. Wide: vowels in a row sound alike to broad classes. */
const reach = 40;

/**
 * A first guess without any model: each state is given the energy, periodicity and tilt of its kind of sound. Calls
 * `visit` with each frame, network state and probability. Where the broad classes cannot tell (between two vowels),
 * the probabilities spread evenly instead of piling up at one edge, which is what a single path would do.
 * Returns false when the recording is too short.
 */
export function flatStart(
  features: Features,
  network: Network,
  visit: (frame: number, state: number, probability: number) => void,
): boolean {
  const { frames } = features;
  const { scores, columns, transitions } = broadScores(features, network);
  const { states: path } = viterbi(network, transitions, scores, columns, frames);
  if (path[0]! < 0) return false;
  const chain = chainOf(path, transitions);
  const soft = softAlign(chain, chain.path, reach, scores, columns);
  for (let t = 0; t < frames; t++) {
    for (let j = 0; j < soft.width; j++) {
      const probability = soft.occupancy[t * soft.width + j]!;
      if (probability > 0.005) visit(t, chain.states[soft.low[t]! + j]!, probability);
    }
  }
  return true;
}

function broadScores(features: Features, network: Network) {
  const observations = broadObservations(features);
  const columnOf = new Map<string, number>();
  const kinds: { unit: string; position: number }[] = [];
  const transitions: Transitions = {
    column: new Int32Array(network.states),
    stay: new Float64Array(network.states),
    leave: new Float64Array(network.states),
  };
  for (let s = 0; s < network.states; s++) {
    const unit = network.units[network.unit[s]!]!;
    const position = network.position[s]!;
    const key = `${unit} ${position}`;
    if (!columnOf.has(key)) columnOf.set(key, kinds.push({ unit, position }) - 1);
    const mean = broadFrames(unit, position, statesOf(unit));
    transitions.column[s] = columnOf.get(key)!;
    transitions.stay[s] = Math.log(1 - 1 / mean);
    transitions.leave[s] = -Math.log(mean);
  }
  const columns = kinds.length;
  const scores = new Float32Array(features.frames * columns);
  for (let t = 0; t < features.frames; t++) {
    kinds.forEach(({ unit, position }, j) => {
      scores[t * columns + j] = broadScore(unit, position, observations, t);
    });
  }
  return { scores, columns, transitions };
}
