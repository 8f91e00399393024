import { hopMs } from "./features.ts";
import type { PhoneGraph } from "./graph.ts";
import { statesOf, unitOf } from "./topology.ts";

/** Shortest recording in ms in which some way through the graph can be said, at one frame a state. */
export function shortestDurationMs({ nodes, entries }: PhoneGraph): number {
  const shortest = new Array<number>(nodes.length).fill(Number.POSITIVE_INFINITY);
  for (let n = nodes.length - 1; n >= 0; n--) {
    const { next, last } = nodes[n]!;
    // A long phone repeats its middle state; see `compileNetwork`.
    const own = statesOf(unitOf(nodes[n]!)) + (nodes[n]!.long ? 1 : 0);
    const rest = Math.min(last ? 0 : Number.POSITIVE_INFINITY, ...next.map((to) => shortest[to]!));
    shortest[n] = own + rest;
  }
  return Math.min(...entries.map((n) => shortest[n]!)) * hopMs;
}
