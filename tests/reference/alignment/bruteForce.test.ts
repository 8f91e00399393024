import { describe, expect, test } from "vitest";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { compileNetwork, type Network } from "../../../src/alignment/network.ts";
import { softAlign } from "../../../src/alignment/softAlignment.ts";
import { type Transitions, viterbi } from "../../../src/alignment/viterbi.ts";
import { seededRandom } from "../../../src/statistics/seededRandom.ts";

// Truth: every way through a small graph is written out and added up in the plain, linear domain.

function randomTables(states: number, columns: number, frames: number, seed: number) {
  const random = seededRandom(seed);
  const scores = Float32Array.from({ length: frames * columns }, () => -6 * random.uniform());
  const stay = new Float64Array(states);
  const leave = new Float64Array(states);
  for (let s = 0; s < states; s++) {
    const p = 0.2 + 0.6 * random.uniform();
    stay[s] = Math.log(p);
    leave[s] = Math.log(1 - p);
  }
  const column = Int32Array.from({ length: states }, (_, s) => s % columns);
  return { scores, transitions: { column, stay, leave } satisfies Transitions };
}

/** All paths of `frames` frames with their probabilities. */
function allPaths(
  network: Network,
  transitions: Transitions,
  scores: Float32Array,
  columns: number,
  frames: number,
) {
  const { column, stay, leave } = transitions;
  const found: { path: number[]; probability: number }[] = [];
  const walk = (path: number[], log: number) => {
    const t = path.length;
    const s = path.at(-1)!;
    if (t === frames) {
      if (network.final[s]) found.push({ path, probability: Math.exp(log + leave[s]!) });
      return;
    }
    for (let to = 0; to < network.states; to++) {
      const arcs = network.arcs.subarray(network.arcStart[to], network.arcStart[to + 1]);
      const step = to === s ? stay[s]! : arcs.includes(s) ? leave[s]! : null;
      if (step !== null) walk([...path, to], log + step + scores[t * columns + column[to]!]!);
    }
  };
  for (let s = 0; s < network.states; s++) if (network.entry[s]) walk([s], scores[column[s]!]!);
  return found;
}

describe("viterbi on small graphs", () => {
  test.each([1, 2, 3, 4, 5])("finds the best of all ways (seed %d)", (seed) => {
    const graph = makePhoneGraph([{ phone: "t" }, { phone: "u" }, { phone: "pause", optional: true }]);
    const network = compileNetwork(graph);
    const frames = 8;
    const columns = 4;
    const { scores, transitions } = randomTables(network.states, columns, frames, seed);
    const ways = allPaths(network, transitions, scores, columns, frames);
    expect(ways.length).toBeGreaterThan(100);
    const best = ways.reduce((a, b) => (b.probability > a.probability ? b : a));
    const found = viterbi(network, transitions, scores, columns, frames);
    expect([...found.states]).toEqual(best.path);
    expect(found.score).toBeCloseTo(Math.log(best.probability), 9);
  });
  test("says −∞ when there are fewer frames than states", () => {
    const network = compileNetwork(makePhoneGraph([{ phone: "a" }, { phone: "o" }], { edgePauses: false }));
    const { scores, transitions } = randomTables(network.states, 2, 5, 1);
    expect(viterbi(network, transitions, scores, 2, 5)).toEqual({
      states: new Int32Array(5).fill(-1),
      score: Number.NEGATIVE_INFINITY,
    });
  });
});

describe("softAlign on a chain", () => {
  const network = compileNetwork(makePhoneGraph([{ phone: "t" }, { phone: "a" }], { edgePauses: false }));
  test.each([1, 2, 3])("gives the sum over all ways and each state's share of it (seed %d)", (seed) => {
    const frames = 8;
    const columns = 3;
    const { scores, transitions } = randomTables(network.states, columns, frames, seed);
    const ways = allPaths(network, transitions, scores, columns, frames);
    const total = ways.reduce((sum, { probability }) => sum + probability, 0);
    const { states: path } = viterbi(network, transitions, scores, columns, frames);
    const soft = softAlign(transitions, path, network.states, scores, columns);
    expect(soft.score).toBeCloseTo(Math.log(total), 9);
    for (let t = 0; t < frames; t++) {
      for (let j = 0; j < soft.width; j++) {
        const state = soft.low[t]! + j;
        const share = ways
          .filter(({ path: way }) => way[t] === state)
          .reduce((sum, w) => sum + w.probability, 0);
        expect(soft.occupancy[t * soft.width + j]).toBeCloseTo(share / total, 6);
      }
    }
  });
  test("shares each frame out completely, also when probabilities lie far below the smallest number", () => {
    const frames = 40;
    const { scores, transitions } = randomTables(network.states, 3, frames, 9);
    for (let i = 0; i < scores.length; i++) scores[i]! -= 500;
    const { states: path } = viterbi(network, transitions, scores, 3, frames);
    const soft = softAlign(transitions, path, 2, scores, 3);
    for (let t = 0; t < frames; t++) {
      let sum = 0;
      for (let j = 0; j < soft.width; j++) sum += soft.occupancy[t * soft.width + j]!;
      expect(sum).toBeCloseTo(1, 5);
    }
  });
});
