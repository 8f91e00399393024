import type { Features } from "../../../src/alignment/features.ts";
import type { GraphPart } from "../../../src/alignment/graph.ts";

/** A phone as labelled, in upper case where the label marks it devoiced. */
export interface TrueSpan {
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
}

/** One recording with what was said and when. */
export interface Item {
  readonly id: string;
  readonly speaker: string;
  readonly features: Features;
  readonly parts: readonly GraphPart[];
  readonly truth: readonly TrueSpan[];
}

/** Recordings of one kind. `edgePauses`: whether silence may stand at their ends. */
export interface Material {
  readonly name: string;
  readonly items: readonly Item[];
  readonly edgePauses: boolean;
  readonly seconds: number;
}
