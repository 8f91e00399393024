import type { ReferencePhone } from "../../../src/alignment/boundaryErrors.ts";
import type { Features } from "../../../src/alignment/features.ts";
import type { GraphPart } from "../../../src/alignment/graph.ts";

/** One recording with what was said and when. */
export interface Item {
  readonly id: string;
  readonly speaker: string;
  readonly features: Features;
  readonly parts: readonly GraphPart[];
  readonly truth: readonly ReferencePhone[];
}

/** Recordings of one kind. `edgePauses`: whether silence may stand at their ends. */
export interface Material {
  readonly name: string;
  readonly items: readonly Item[];
  readonly edgePauses: boolean;
  readonly seconds: number;
}

export function materialOf(name: string, items: readonly Item[], edgePauses: boolean): Material {
  const seconds = items.reduce((sum, { features }) => sum + features.durationMs, 0) / 1000;
  return { name, items, edgePauses, seconds };
}

/** The first utterances that last `seconds` together, and the others. */
export function splitAt(material: Material, seconds: number): [Material, Material] {
  let first = 0;
  for (let sum = 0; sum < seconds && first < material.items.length; first++)
    sum += material.items[first]!.features.durationMs / 1000;
  const { name, items, edgePauses } = material;
  return [
    materialOf(`${name}, ${seconds} s`, items.slice(0, first), edgePauses),
    materialOf(`${name}, rest`, items.slice(first), edgePauses),
  ];
}
