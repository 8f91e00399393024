import type { PhoneGraph } from "./graph.ts";
import { statesOf, unitOf } from "./topology.ts";

/** A phone graph spelt out into states, in an order in which arcs point forward. */
export interface Network {
  readonly graph: PhoneGraph;
  readonly states: number;
  /** Index into `units` and number of the state within its unit. */
  readonly unit: Int32Array;
  readonly position: Int32Array;
  /** Graph node of each state. */
  readonly node: Int32Array;
  /** Predecessors other than the state itself: `arcs[arcStart[s] … arcStart[s+1])`. */
  readonly arcStart: Int32Array;
  readonly arcs: Int32Array;
  /** 1 where the utterance may start, and where it may end. */
  readonly entry: Uint8Array;
  readonly final: Uint8Array;
  readonly units: readonly string[];
}

/** How often to repeat the states of a long vowel: it lasts about twice as long, so at least one and a half times. */
const longRepeats = 2;

export function compileNetwork(graph: PhoneGraph): Network {
  const units: string[] = [];
  const unitIndex = new Map<string, number>();
  const unit: number[] = [];
  const position: number[] = [];
  const node: number[] = [];
  const firstState: number[] = [];
  const lastState: number[] = [];
  const within: number[] = [];
  graph.nodes.forEach((graphNode, n) => {
    const name = unitOf(graphNode);
    let index = unitIndex.get(name);
    if (index === undefined) {
      index = units.push(name) - 1;
      unitIndex.set(name, index);
    }
    const count = statesOf(name);
    firstState.push(unit.length);
    for (let p = 0; p < count; p++) {
      const repeats = graphNode.long && p === Math.floor(count / 2) ? longRepeats : 1;
      for (let r = 0; r < repeats; r++) {
        within.push(p === 0 && r === 0 ? -1 : unit.length - 1);
        unit.push(index);
        position.push(p);
        node.push(n);
      }
    }
    lastState.push(unit.length - 1);
  });
  const predecessors: number[][] = unit.map((_, s) => (within[s]! >= 0 ? [within[s]!] : []));
  const entry = new Uint8Array(unit.length);
  const final = new Uint8Array(unit.length);
  for (const n of graph.entries) entry[firstState[n]!] = 1;
  graph.nodes.forEach((graphNode, n) => {
    for (const to of graphNode.next) predecessors[firstState[to]!]!.push(lastState[n]!);
    if (graphNode.last) final[lastState[n]!] = 1;
  });
  const arcStart = new Int32Array(unit.length + 1);
  predecessors.forEach((list, s) => {
    arcStart[s + 1] = arcStart[s]! + list.length;
  });
  return {
    graph,
    states: unit.length,
    unit: Int32Array.from(unit),
    position: Int32Array.from(position),
    node: Int32Array.from(node),
    arcStart,
    arcs: Int32Array.from(predecessors.flat()),
    entry,
    final,
    units,
  };
}
