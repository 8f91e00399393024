import { expect, test } from "vitest";
import { makePhoneGraph } from "../../../src/alignment/graph.ts";
import { compileNetwork } from "../../../src/alignment/network.ts";
import { shortestDurationMs } from "../../../src/alignment/shortestDuration.ts";
import { viterbi } from "../../../src/alignment/viterbi.ts";

const graph = makePhoneGraph([
  { phone: "s" },
  { phone: "u" },
  { phone: "pause", optional: true },
  { choices: [[{ phone: "k" }, { phone: "a", long: true }], [{ phone: "t" }]] },
]);

test("shortestDurationMs counts the shortest way: s, devoiced u, t", () => {
  expect(shortestDurationMs(graph)).toBe((3 + 2 + 2) * 10);
});

test("shortestDurationMs is the length from which on a path exists", () => {
  for (const parts of [graph, makePhoneGraph([{ phone: "a", long: true }], { edgePauses: false })]) {
    const network = compileNetwork(parts);
    const zeros = new Float64Array(network.states);
    const transitions = { column: new Int32Array(network.states), stay: zeros, leave: zeros };
    const score = (frames: number) =>
      viterbi(network, transitions, new Float32Array(frames), 1, frames).score;
    const frames = shortestDurationMs(parts) / 10;
    expect(score(frames)).toBe(0);
    expect(score(frames - 1)).toBe(Number.NEGATIVE_INFINITY);
  }
});
