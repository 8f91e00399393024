import type { PhoneGraph } from "./graph.ts";
import { standIn, statesOf, type Unit, unitOf } from "./topology.ts";

/** The units a model has states for. */
export interface Inventory {
  /** Number of the first state of each unit, in alphabetical order of units. */
  readonly firstState: ReadonlyMap<Unit, number>;
  readonly states: number;
}

/** Fewest tokens for which a unit gets states of its own. */
const fewestTokens = 6;

/** How often each unit occurs. */
export type UnitCounts = ReadonlyMap<Unit, number>;

export function countUnits(graphs: readonly PhoneGraph[]): UnitCounts {
  const tokens = new Map<Unit, number>();
  for (const graph of graphs)
    for (const node of graph.nodes) tokens.set(unitOf(node), (tokens.get(unitOf(node)) ?? 0) + 1);
  return tokens;
}

/** Units with at least six tokens; rarer ones lend theirs to their stand-in. */
export function inventoryOf(counts: UnitCounts): Inventory {
  const tokens = new Map(counts);
  const rare = [...tokens]
    .filter(([, n]) => n < fewestTokens)
    .sort(([a, n], [b, m]) => n - m || (a < b ? -1 : 1));
  for (const [unit] of rare) {
    const n = tokens.get(unit)!;
    if (n >= fewestTokens) continue;
    const other = findStandIn(unit, (name) => name !== unit && tokens.has(name));
    if (other === null) continue;
    tokens.delete(unit);
    tokens.set(other, tokens.get(other)! + n);
  }
  return numberUnits([...tokens.keys()].sort());
}

export function numberUnits(units: readonly Unit[]): Inventory {
  const firstState = new Map<Unit, number>();
  let states = 0;
  for (const unit of units) {
    firstState.set(unit, states);
    states += statesOf(unit);
  }
  return { firstState, states };
}

function findStandIn(unit: Unit, has: (name: Unit) => boolean): Unit | null {
  const seen = new Set<Unit>();
  let at: Unit | null = unit;
  while (at !== null && !seen.has(at)) {
    if (has(at)) return at;
    seen.add(at);
    at = standIn(at);
  }
  return null;
}

/** Model state for state `position` of `unit` or of its stand-in; null when nothing alike was ever trained. */
export function modelState(inventory: Inventory, unit: Unit, position: number): number | null {
  const own = findStandIn(unit, (name) => inventory.firstState.has(name));
  if (own === null) return null;
  return inventory.firstState.get(own)! + Math.min(position, statesOf(own) - 1);
}
